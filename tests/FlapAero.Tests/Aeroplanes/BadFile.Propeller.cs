namespace FlapAero.Tests.Aeroplanes;

/// <content>Ways to spoil the propeller and its engine.</content>
internal sealed partial record BadFile
{
    // Properties that compute: static initializers of two files have no order.
    private static Dictionary<string, BadFile> PropellerOfForm => new()
    {
        ["propeller missing"] = new(
            root => root.Remove("propeller"), "propeller", "\"$schema\"", "the key is missing; write \"propeller\": an object { … }", 1),
        ["diameter missing"] = new(
            root => root.Remove("propeller.diameter"), "propeller.diameter", "\"propeller\"",
            "the key is missing; write \"diameter\": { \"value\": …, \"unit\": \"m\", \"origin\": \"…\" }"),
        ["free speed missing"] = new(
            root => root.Remove("propeller.closedThrottle.freeSpeed"), "propeller.closedThrottle.freeSpeed", "\"closedThrottle\"",
            "write \"freeSpeed\": { \"value\": …, \"unit\": \"rpm\""),
        ["propeller key misspelt"] = new(
            root => root.Rename("propeller.diameter", "diametre"), "propeller.diametre", "\"diametre\"", "did you mean \"diameter\"?"),
        ["coefficient misspelt"] = new(
            root => root.Rename("propeller.table.rows[4].thrustCoefficient", "thrustCoeficient"), "propeller.table.rows[4].thrustCoeficient",
            "\"thrustCoeficient\"", "did you mean \"thrustCoefficient\"?"),
        ["row of two"] = new(
            root => root.Remove("propeller.table.rows[4].powerCoefficient"), "propeller.table.rows[4].powerCoefficient",
            "\"advanceRatio\": 0.4", "the key is missing; write \"powerCoefficient\": a number", 1),
        ["row of four"] = new(
            root => root.At("propeller.table.rows[4]")["efficiency"] = 0.55, "propeller.table.rows[4].efficiency", "\"efficiency\"",
            "the keys here are \"advanceRatio\", \"thrustCoefficient\" and \"powerCoefficient\""),
        ["row a list"] = Value("propeller.table.rows[4]", "\"0.4, 0.08\"", "the text \"0.4, 0.08\" stands here; an object with \"advanceRatio\""),
        ["four rows"] = new(
            root =>
            {
                for (int row = 14; row >= 4; row--) root.Remove($"propeller.table.rows[{row}]");
            },
            "propeller.table.rows", "\"advanceRatio\": 0,", "a list of 4 stands here; a list [ … ] of five rows or more", 2),
        ["text for a coefficient"] = Value(
            "propeller.table.rows[2].powerCoefficient", "\"0.064\"", "the text \"0.064\" stands here; a number is wanted, without quotes"),
        ["table of no origin"] = Value("propeller.table.origin", "\"found\"", "\"found\" does not say where the value comes from"),
        ["angular speed"] = Value("propeller.maximumSpeed.unit", "\"rad/s\"", "\"rad/s\" is no unit of an engine speed; use rpm or rev/s"),
        ["torque with a dot"] = Value(
            "propeller.closedThrottle.torqueAtStandstill.unit", "\"N·m\"", "\"N·m\" is no unit of a torque; use N.m or lbf.ft"),
    };

    private static Dictionary<string, BadFile> PropellerOfSense => new()
    {
        ["diameter"] = Value("propeller.diameter.value", "19.3", "propeller diameter 19.3 m is refused; allowed is 0.1 m to 4 m"),
        ["highest engine speed"] = Value("propeller.maximumSpeed.value", "41", "highest engine speed 41 rpm is refused; allowed is 500 rpm to 20"),
        ["full-throttle torque"] = Value("propeller.fullThrottleTorque.value", "3.17", "full-throttle torque 3.17 N·m is refused; allowed is 20 N·m to 3000"),
        ["torque"] = Value(
            "propeller.closedThrottle.torqueAtStandstill.value", "-111", "torque at standstill -111 N·m is refused; allowed is 0.001 N·m to 2"),
        ["free speed"] = Value("propeller.closedThrottle.freeSpeed.value", "88", "idle speed without a propeller 88 rpm is refused"),
        ["idles too fast"] = Value(
            "propeller.closedThrottle.freeSpeed.value", "2705", "2705 rpm is not less than the highest speed, 2700 rpm",
            "propeller.closedThrottle.freeSpeed"),
        ["no row at rest"] = Value(
            "propeller.table.rows[0].advanceRatio", "0.05", "the table starts at 0.05, not at 0; the first row is the propeller at rest"),
        ["negative advance ratio"] = Value(
            "propeller.table.rows[0].advanceRatio", "-0.05", "advance ratio -0.05 is refused; allowed is 0 to 5"),
        ["advance ratio falls"] = Value(
            "propeller.table.rows[4].advanceRatio", "0.29", "0.29 is not more than 0.3 of the row before; the advance ratio rises"),
        ["advance ratio stays"] = Value(
            "propeller.table.rows[4].advanceRatio", "0.30", "0.30 is not more than 0.3 of the row before; the advance ratio rises"),
        ["thrust in newtons"] = Value("propeller.table.rows[4].thrustCoefficient", "844", "thrust coefficient 844 is refused; allowed is -1 to 1"),
        ["power in watts"] = Value("propeller.table.rows[4].powerCoefficient", "605", "power coefficient 605 is refused; allowed is -1 to 1"),
        ["brakes at rest"] = Value(
            "propeller.table.rows[0].thrustCoefficient", "-0.1044", "-0.1044 is not positive; at rest the thrust coefficient is positive"),
        ["thrust comes back"] = Value(
            "propeller.table.rows[12].thrustCoefficient", "0.0731", "0.0731 follows on -0.04 of the row before; the thrust coefficient changes its sign once"),
        ["power comes back"] = Value(
            "propeller.table.rows[12].powerCoefficient", "0.0441", "0.0441 follows on -0.0175 of the row before; the power coefficient changes its sign once"),
        ["ends before zero thrust"] = new(
            root =>
            {
                for (int row = 14; row >= 9; row--) root.Remove($"propeller.table.rows[{row}]");
                root.Set("propeller.table.rows[8].powerCoefficient", "-0.001");
                root.Set("propeller.table.rows[8].thrustCoefficient", "0.0276");
            },
            "propeller.table.rows[8].thrustCoefficient", "\"thrustCoefficient\": 0.0276",
            "the table ends at 0.0276; it must reach past zero of the thrust coefficient, where a glide turns the propeller: add rows"),
        ["ends before zero power"] = new(
            root =>
            {
                for (int row = 14; row >= 11; row--) root.Remove($"propeller.table.rows[{row}]");
            },
            "propeller.table.rows[10].powerCoefficient", "\"powerCoefficient\": 0.0005",
            "the table ends at 0.0005; it must reach past zero of the power coefficient"),
        ["more than it takes"] = Value(
            "propeller.table.rows[7].powerCoefficient", "0.0311",
            "0.0311 is less than advance ratio times thrust coefficient, 0.7 × 0.0455; no propeller gives more power than it takes"),
    };
}
