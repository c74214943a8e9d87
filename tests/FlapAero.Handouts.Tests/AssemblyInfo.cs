using FlapAero.Handouts.Tests;
using Xunit.Sdk;
using Xunit.v3;

// Much of a test in a browser is waiting. Kernels take turns.
[assembly: Parallelization(Mode = ParallelMode.Collections, MaxThreads = 2)]
[assembly: AssemblyFixture(typeof(Browser))]
[assembly: AssemblyFixture(typeof(Firefox))]
[assembly: AssemblyFixture(typeof(LessonPages))]
