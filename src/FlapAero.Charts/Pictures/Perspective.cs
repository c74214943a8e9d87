namespace FlapAero.Charts;

/// <summary>
/// True perspective from an eye that looks along the fuselage's level line, pitched up by θ: a point x ahead, y to
/// the right and z up from the eye is seen at <c>F y/d</c> to the right and <c>F u/d</c> up, with <c>d = x cos θ + z
/// sin θ</c> the distance along the line of sight and <c>u = z cos θ − x sin θ</c> the height above it.
/// </summary>
/// <param name="Pitch">θ in radians, nose up positive.</param>
/// <param name="Focal">F: pixels for a tangent of one.</param>
/// <param name="Centre">Where the line of sight meets the picture.</param>
internal sealed record Perspective(double Pitch, double Focal, Point Centre)
{
    private const double Nearest = 1;

    /// <summary>How far the eye looks to the right of what lies ahead, in radians.</summary>
    internal double Yaw { get; init; }

    internal Point See(Space at)
    {
        at = Turned(at);
        double ahead = Ahead(at), up = at.Z * Math.Cos(Pitch) - at.X * Math.Sin(Pitch);
        return new Point(Centre.X + Focal * at.Y / ahead, Centre.Y - Focal * up / ahead);
    }

    /// <summary>An area as it is seen: the part of it that lies ahead of the eye.</summary>
    internal IReadOnlyList<Point> See(IReadOnlyList<Space> area)
    {
        var seen = new List<Point>();
        for (int i = 0; i < area.Count; i++)
        {
            (Space from, Space to) = (area[i], area[(i + 1) % area.Count]);
            (double near, double far) = (Ahead(Turned(from)) - Nearest, Ahead(Turned(to)) - Nearest);
            if (near >= 0) seen.Add(See(from));
            if (near * far < 0) seen.Add(See(from.Towards(to, near / (near - far))));
        }
        return seen;
    }

    /// <summary>Where a line of sight so far above the level line meets the picture.</summary>
    internal double Above(double radians) => Centre.Y - Focal * Math.Tan(radians);

    private Space Turned(Space at)
    {
        (double sin, double cos) = Math.SinCos(Yaw);
        return new(at.X * cos + at.Y * sin, at.Y * cos - at.X * sin, at.Z);
    }

    private double Ahead(Space at) => at.X * Math.Cos(Pitch) + at.Z * Math.Sin(Pitch);
}

/// <summary>A point seen from the eye, in metres.</summary>
/// <param name="X">Ahead.</param>
/// <param name="Y">To the right.</param>
/// <param name="Z">Up.</param>
internal readonly record struct Space(double X, double Y, double Z)
{
    internal Space Towards(Space other, double part) =>
        new(X + part * (other.X - X), Y + part * (other.Y - Y), Z + part * (other.Z - Z));
}
