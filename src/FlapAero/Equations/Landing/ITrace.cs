namespace FlapAero.Equations;

/// <summary>Told of every accepted step of the first lane.</summary>
internal interface ITrace<TMotion>
{
    void Add(double time, double distance, in TMotion motion);
}
