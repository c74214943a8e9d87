using FlapAero.Packages.Tests;
using Xunit.Sdk;
using Xunit.v3;

// The kernel works in the folder of the process: one test at a time. All share what was packed once.
[assembly: Parallelization(Mode = ParallelMode.None)]
[assembly: AssemblyFixture(typeof(PackedFeed))]
