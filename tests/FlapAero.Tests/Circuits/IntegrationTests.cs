using static FlapAero.Tests.Circuits.Plans;

namespace FlapAero.Tests.Circuits;

/// <summary>Each leg of random circuits against a point mass that is integrated in small steps.</summary>
public sealed class IntegrationTests
{
    [Fact]
    public void Legs_IntegratedFromTheirForces_EndWhereTheySay() => EachCircuit(
        circuit =>
        {
            foreach (CircuitLeg leg in circuit.Legs)
            {
                double[] end = PointMass.Fly(circuit.Plan, leg);
                Assert.Equal(leg.Airspeed.True.MetersPerSecond, end[0], 1e-6);
                Assert.Equal(leg.PathAngle.Radians, end[1], 1e-8);
                SameHeading(leg.End.Heading.Degrees - circuit.Plan.Runway.Direction.Degrees, end[2] * 180 / Math.PI);
                Assert.Equal(leg.End.X.Meters, end[3], 1e-4);
                Assert.Equal(leg.End.Y.Meters, end[4], 1e-4);
                Assert.Equal(leg.End.Height.Meters, end[5], 1e-4);
                Assert.Equal(leg.Distance.Meters, end[6], 1e-4);
            }
        },
        iterations: 300);

    [Fact]
    public void Energy_AlongEachLeg_IsWhatThrustLessDragPutsIn() => EachCircuit(
        circuit =>
        {
            foreach (CircuitLeg leg in circuit.Legs)
            {
                double work = PointMass.Fly(circuit.Plan, leg)[7];
                Assert.Equal(-leg.HeightLost.Meters, work / leg.Configuration.Weight.Newtons, 1e-4);
            }
        },
        iterations: 100);
}
