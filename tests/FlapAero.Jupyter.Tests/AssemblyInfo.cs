using FlapAero.Jupyter.Tests;
using Xunit.Sdk;
using Xunit.v3;

// Each test starts kernels of its own, each several hundred megabytes: one at a time.
[assembly: Parallelization(Mode = ParallelMode.None)]
[assembly: AssemblyFixture(typeof(InstalledJupyter))]
[assembly: AssemblyFixture(typeof(FlapAero.Handouts.Tests.Browser))]
