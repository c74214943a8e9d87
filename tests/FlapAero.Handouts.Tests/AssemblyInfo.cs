using FlapAero.Handouts.Tests;
using Xunit.Sdk;
using Xunit.v3;

// Lessons write to the process's console and register formatters for it: one at a time.
[assembly: Parallelization(Mode = ParallelMode.None)]
[assembly: AssemblyFixture(typeof(Browser))]
