using FlapAero.Jupyter.Tests;
using Xunit.Sdk;
using Xunit.v3;

// Each test starts kernels of its own, each several hundred megabytes: the lessons in the front end, and two others beside them.
[assembly: Parallelization(Mode = ParallelMode.Collections, MaxThreads = 3)]
[assembly: AssemblyFixture(typeof(InstalledJupyter))]
