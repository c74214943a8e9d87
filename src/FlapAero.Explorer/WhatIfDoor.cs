using System.Globalization;
using System.Runtime.InteropServices.JavaScript;
using FlapAero.Charts;

namespace FlapAero.Explorer;

/// <summary>The door between the worker's script and the what-if page's model. It names nothing that needs the compiler.</summary>
internal static partial class WhatIfDoor
{
    private static readonly WhatIf Model = Made();

    /// <inheritdoc cref="WhatIf.Land"/>
    [JSExport]
    internal static string Land(string setting) => Model.Land(setting);

    /// <inheritdoc cref="WhatIf.Take"/>
    [JSExport]
    internal static string Take(string name, string text) => Model.Take(name, text);

    /// <inheritdoc cref="WhatIf.Picture"/>
    [JSExport]
    internal static string Picture(string setting, string name) => Model.Picture(setting, name);

    /// <inheritdoc cref="WhatIf.Spread"/>
    [JSExport]
    internal static string Spread(string setting, int batch, int count) => Model.Spread(setting, batch, count);

    /// <inheritdoc cref="WhatIf.Help"/>
    [JSExport]
    internal static string Help(string setting) => Model.Help(setting);

    private static WhatIf Made()
    {
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        return new WhatIf();
    }
}
