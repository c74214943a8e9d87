using FlapAero.Explorer.Tests;
using FlapAero.Handouts.Tests;
using Xunit.Sdk;
using Xunit.v3;

// The kernel in process writes to the process's console: one test at a time.
[assembly: Parallelization(Mode = ParallelMode.None)]
[assembly: AssemblyFixture(typeof(Browser))]
[assembly: AssemblyFixture(typeof(Firefox))]
[assembly: AssemblyFixture(typeof(MadeEngine))]
