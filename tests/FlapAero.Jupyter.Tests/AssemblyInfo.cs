using FlapAero.Jupyter.Tests;
using Xunit.Sdk;
using Xunit.v3;

// Each test starts kernels of its own, each several hundred megabytes: the lessons in the front end, and one other beside them.
[assembly: Parallelization(Mode = ParallelMode.Collections, MaxThreads = 2)]
[assembly: AssemblyFixture(typeof(InstalledJupyter))]
[assembly: AssemblyFixture(typeof(FlapAero.Handouts.Tests.Browser))]
