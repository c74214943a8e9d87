using FlapAero.Packages.Tests;
using Xunit.v3;
using Xunit.Sdk;

// The kernel works in the folder of the process: one test at a time. All share what was packed once.
[assembly: Parallelization(Mode = ParallelMode.None)]
[assembly: AssemblyFixture(typeof(PackedFeed))]
