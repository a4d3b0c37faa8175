package staunch.ingest;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import staunch.control.CirculationMethod;
import staunch.control.HydrostaticConstant;
import staunch.control.KillSheetInput;
import staunch.control.StringFriction;
import staunch.earth.BoundUse;
import staunch.earth.EquivalentZero;
import staunch.earth.EvidenceUse;
import staunch.earth.LogUse;
import staunch.earth.Quality;
import staunch.earth.Standing;
import staunch.envelope.Drilling;
import staunch.envelope.MethodOptions;
import staunch.fluid.MudBase;
import staunch.ingest.Form.Amount;
import staunch.ingest.Form.Choice;
import staunch.ingest.Form.Count;
import staunch.ingest.Form.Csv;
import staunch.ingest.Form.Flag;
import staunch.ingest.Form.NameOrNested;
import staunch.ingest.Form.Nested;
import staunch.ingest.Form.PumpRate;
import staunch.ingest.Form.RockPressure;
import staunch.ingest.Form.Rows;
import staunch.ingest.Form.Text;
import staunch.ingest.Form.UnitOf;
import staunch.ingest.Form.Word;
import staunch.limit.StackElement;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** Every key of the case file: the one table that reader, schema and reference are made from. */
final class CaseKeys {
    static final String FILE = "file";
    static final String NO_STRING = "none";
    static final String REQUIRED = "required";
    static final String TOLERANCE = "tolerance";
    static final String SINGLE_BUBBLE = "single_bubble";
    static final String DISTRIBUTED = "distributed";
    static final String GAS_TO_SURFACE = "gas_to_surface";
    static final String KICK_LIMITED = "kick_limited";
    static final String FRACTURE_LIMITED = "fracture_limited";
    static final String MUD_AND_GAS = "mud_and_gas";

    private static final double DEEPEST = 20_000;

    static final Block TITLE_BLOCK = Block.of(
            "title_block",
            text("well", "Name of the well.").must(),
            text("title", "What the case is.").must(),
            text("revision", "Revision of the case."),
            text("date", "Date of the revision, as it is to be printed."),
            text("prepared_by", "Name or initials."),
            text("checked_by", "Name or initials."),
            text("approved_by", "Name or initials."),
            text("notice", "Shown with every result, such as \"invented well\"."));

    static final Block UNITS = Block.of(
            "units",
            Key.of("base", new Word(UnitSystem.names()), "Units of everything not named below.")
                    .must(),
            unit("depth", Measure.DEPTH),
            unit("length", Measure.LENGTH),
            unit("diameter", Measure.DIAMETER),
            unit("pressure", Measure.PRESSURE_DIFFERENCE),
            unit("density", Measure.DENSITY),
            unit("volume", Measure.VOLUME),
            unit("capacity", Measure.CAPACITY),
            unit("flow_rate", Measure.FLOW_RATE),
            unit("gas_rate", Measure.GAS_RATE),
            unit("temperature", Measure.TEMPERATURE),
            unit("pressure_gradient", Measure.PRESSURE_GRADIENT),
            unit("mass", Measure.MASS),
            unit("weight_per_length", Measure.LINEAR_MASS),
            unit("stress", Measure.STRESS),
            unit("curvature", Measure.CURVATURE),
            unit("speed", Measure.SPEED),
            unit("time", Measure.TIME));

    static final Block DATUM = Block.of(
                    "datum",
                    text("name", "What depths are measured from, such as \"rotary table\".")
                            .must(),
                    amount("elevation", Measure.LENGTH, -450, 6000, "Height of the datum above mean sea level.")
                            .must(),
                    amount("ground_level", Measure.DEPTH, 0, 50, "Land well: depth of the ground below the datum."),
                    amount("water_depth", Measure.LENGTH, 1, 4000, "Well at sea: mean sea level to seabed."),
                    Key.of("stack", new Word(List.of("surface", "seabed")), "Well at sea: where the BOP stack stands.")
                            .without("Needed with water_depth."),
                    amount(
                                    "sea_water_density",
                                    Measure.DENSITY,
                                    990,
                                    1080,
                                    "Density of the sea, which counts where equivalent densities are from the mudline, without a"
                                            + " riser, and as back-up of a subsea stack.")
                            .without("Needed where equivalent densities count from the mudline; else 1025 kg/m³."))
            .exactlyOne("ground_level", "water_depth");

    static final Block STATION = Block.of(
            "station",
            amount("md", Measure.DEPTH, 0, DEEPEST, "Measured depth below the datum.")
                    .must(),
            amount("inclination", Measure.ANGLE, 0, Math.PI, "Angle from vertical; above 90° the hole goes up.")
                    .must(),
            amount("azimuth", Measure.ANGLE, 0, 2 * Math.PI, "Angle from north.")
                    .must(),
            amount("tvd", Measure.DEPTH, 0, DEEPEST, "Vertical depth, as a check only: minimum curvature counts."));

    static final Block SURVEY = Block.of(
                    "survey",
                    Key.of(FILE, new Csv(STATION), "CSV file of the stations."),
                    rows("stations", STATION, "Stations, downwards."),
                    amount("vertical_to", Measure.DEPTH, 1, DEEPEST, "A vertical hole down to this depth."))
            .exactlyOne(FILE, "stations", "vertical_to");

    static final Block PRESSURE_POINT = Block.of(
                    "pressure_point",
                    tvd("tvd"),
                    tvdss("tvdss"),
                    rock("likely", "Best estimate.").must(),
                    rock("low", "Lower estimate; given at every point or at none.")
                            .without("The likely estimate is used."),
                    rock("high", "Higher estimate; given at every point or at none.")
                            .without("The likely estimate is used."))
            .exactlyOne("tvd", "tvdss");

    static final Block PORE_PRESSURE = Block.of(
                    "pore_pressure",
                    Key.of(FILE, new Csv(PRESSURE_POINT), "CSV file of the points."),
                    rows("points", PRESSURE_POINT, "Points, downwards; two at one depth make a step."),
                    text("source", "Where the estimate comes from."))
            .exactlyOne(FILE, "points");

    static final Block STRENGTH = Block.of(
                    "strength",
                    Key.of(FILE, new Csv(PRESSURE_POINT), "CSV file of the points."),
                    rows("points", PRESSURE_POINT, "Points, downwards; two at one depth make a step."),
                    text("source", "Where the prediction comes from."))
            .exactlyOne(FILE, "points");

    static final Block STRENGTH_TEST = Block.of(
                    "strength_test",
                    text("name", "What the programme calls it.").must(),
                    amount("md", Measure.DEPTH, 1, DEEPEST, "Measured depth of the formation tested."),
                    tvd("tvd"),
                    tvdss("tvdss"),
                    Key.of("standing", new Choice(Standing.class), "What the figure is worth.")
                            .must(),
                    rock("pressure", "What the formation held, at its depth."),
                    amount(
                            "surface_pressure",
                            Measure.PRESSURE_GAUGE,
                            0,
                            2e8,
                            "Pressure at surface; test_mud to the datum is added."),
                    amount("test_mud", Measure.DENSITY, 700, 2700, "Mud in the hole during the test.")
                            .without("Needed with surface_pressure."),
                    text("source", "Document it comes from.").must(),
                    text("place", "Page or line there."),
                    Key.of(
                                    "planned",
                                    new Flag(),
                                    "Whether it is still to be made: then it counts no more than offset evidence lets"
                                            + " expect.")
                            .without("false"))
            .exactlyOne("md", "tvd", "tvdss")
            .exactlyOne("pressure", "surface_pressure");

    static final Block WEAK_ZONE = Block.of(
                    "weak_zone",
                    text("name", "What the programme calls it.").must(),
                    tvd("top_tvd"),
                    tvdss("top_tvdss"),
                    tvd("bottom_tvd"),
                    tvdss("bottom_tvdss"),
                    rock(
                                    "strength",
                                    "What the zone holds. A pressure, or an equivalent density from sea level or mudline, is"
                                            + " taken at its top and held as equivalent density from the datum.")
                            .must(),
                    text("source", "Document it comes from.").must(),
                    text("place", "Page or line there."))
            .exactlyOne("top_tvd", "top_tvdss")
            .exactlyOne("bottom_tvd", "bottom_tvdss");

    static final Block STAY_OUT = Block.of(
                    "shoe_stay_out",
                    text("name", "What the programme calls it.").must(),
                    tvd("top_tvd"),
                    tvdss("top_tvdss"),
                    tvd("bottom_tvd"),
                    tvdss("bottom_tvdss"),
                    text("reason", "Why no shoe may stand there.").must(),
                    text("source", "Document it comes from.").must(),
                    text("place", "Page or line there."))
            .exactlyOne("top_tvd", "top_tvdss")
            .exactlyOne("bottom_tvd", "bottom_tvdss");

    static final Block TEMPERATURE_POINT = Block.of(
                    "temperature_point",
                    tvd("tvd"),
                    tvdss("tvdss"),
                    amount("temperature", Measure.TEMPERATURE, 260, 600, "Temperature there.")
                            .must())
            .exactlyOne("tvd", "tvdss");

    static final Block GEOTHERMAL = Block.of(
            "geothermal",
            amount("at_surface", Measure.TEMPERATURE, 260, 600, "Temperature at the datum.")
                    .without("That at ground or seabed is used above it."),
            amount("at_ground", Measure.TEMPERATURE, 260, 600, "Temperature at ground level or seabed.")
                    .must(),
            amount("gradient", Measure.TEMPERATURE_GRADIENT, 0, 0.15, "Rise with vertical depth below it.")
                    .must());

    static final Block TEMPERATURE = Block.of(
                    "temperature",
                    Key.of(FILE, new Csv(TEMPERATURE_POINT), "CSV file of the points."),
                    rows(
                            "points",
                            TEMPERATURE_POINT,
                            "Points, downwards; at sea they begin at the datum and take in the sea."),
                    Key.of("geothermal", new Nested(GEOTHERMAL, true), "Linear from ground or seabed."))
            .exactlyOne(FILE, "points", "geothermal");

    static final Block TOP = Block.of(
                    "top", text("formation", "Name of the formation.").must(), tvd("tvd"), tvdss("tvdss"))
            .exactlyOne("tvd", "tvdss");

    static final Block EARTH = Block.of(
            "earth",
            Key.of(
                            "equivalent_density_datum",
                            new Choice(EquivalentZero.Place.class),
                            "Where equivalent densities and gradients of this block count from; on land the mudline is"
                                    + " ground level.")
                    .without("The well's datum (rotary table)."),
            Key.of("pore_pressure", new Nested(PORE_PRESSURE, true), "Pore pressure by vertical depth.")
                    .without("Drilled kick (by default method), pressure window, back-up of casing."),
            Key.of("strength", new Nested(STRENGTH, true), "Predicted strength (fracture pressure) by vertical depth.")
                    .without("Open hole; tolerance too where there is no test at the shoe."),
            rowsOrFile("strength_tests", STRENGTH_TEST, "Leak-off and integrity tests, planned or done.")
                    .without("Strength at the shoe is the prediction."),
            rowsOrFile("weak_zones", WEAK_ZONE, "Zones weaker than the prediction says."),
            Key.of("temperature", new Nested(TEMPERATURE, true), "Temperature by vertical depth.")
                    .without("Every tolerance with a real or an ideal gas."),
            rowsOrFile("tops", TOP, "Formation tops, downwards."),
            rowsOrFile("shoe_stay_outs", STAY_OUT, "Depths at which no casing shoe may stand.")
                    .without("A shoe may stand anywhere."));

    private static final List<Key> PIPE = List.of(
            amount("outside_diameter", Measure.DIAMETER, 0.05, 1.5, "Nominal outside diameter."),
            amount(
                    "weight",
                    Measure.LINEAR_MASS,
                    5,
                    1500,
                    "Nominal weight, from which the wall follows by the sizes of API Spec 5CT."),
            amount("wall", Measure.DIAMETER, 0.002, 0.1, "Nominal wall."),
            amount("inside_diameter", Measure.DIAMETER, 0.03, 1.5, "Nominal inside diameter."),
            text("grade", "Grade of the steel.").without("Burst, unless burst_rating or yield_strength is given."),
            amount("yield_strength", Measure.STRESS, 1e8, 2e9, "Minimum yield of the grade.")
                    .without("That of the named grade."),
            amount("burst_rating", Measure.PRESSURE_DIFFERENCE, 1e5, 4e8, "Internal yield pressure of the pipe.")
                    .without("Computed from yield and wall."),
            amount(
                            "connection_rating",
                            Measure.PRESSURE_DIFFERENCE,
                            1e5,
                            4e8,
                            "Internal pressure rating of the connection.")
                    .without("The connection is taken to be as strong as the pipe."),
            amount("wear", Measure.NUMBER, 0, 0.95, "Lost part of the wall.").without("None."));

    static final Block CASING_INTERVAL = new Block(
            "casing_interval",
            with(
                    PIPE,
                    amount("to", Measure.DEPTH, 0, DEEPEST, "Measured depth of its bottom.")
                            .must()),
            List.of());

    static final Block BACK_UP_POINT = Block.of(
                    "back_up_point",
                    tvd("tvd"),
                    tvdss("tvdss"),
                    amount("pressure", Measure.PRESSURE_ABSOLUTE, 1e5, 4e8, "Pressure outside the casing there.")
                            .must())
            .exactlyOne("tvd", "tvdss");

    static final Block BACK_UP = Block.of(
                    "back_up",
                    amount(
                            "density",
                            Measure.DENSITY,
                            0,
                            2700,
                            "A column of this density from ground level or seabed downwards, without the sea's weight."),
                    rows(
                            "points",
                            BACK_UP_POINT,
                            "Pressures, downwards, straight between them; above the first and below the last there is"
                                    + " none."))
            .exactlyOne("density", "points");

    static final Block PRICE = Block.of(
            "price",
            amount("amount", Measure.NUMBER, 0, 1e9, "Price of one unit of length or weight.")
                    .must(),
            text("currency", "Any text; prices of one currency are added up.").must(),
            Key.of(
                            "per",
                            new Word(List.of("m", "ft", "kg", "t", "lb")),
                            "Unit the price is for; weight is nominal where given, else that of plain pipe.")
                    .must());

    static final Block CASING_STRING = new Block(
            "casing_string",
            with(
                    with(
                            PIPE,
                            text("name", "What the programme calls it.").must(),
                            amount(
                                            "top",
                                            Measure.DEPTH,
                                            0,
                                            DEEPEST,
                                            "Measured depth of its top: 0 at a surface wellhead, the seabed wellhead, or the"
                                                    + " liner hanger.")
                                    .must(),
                            amount("shoe", Measure.DEPTH, 0, DEEPEST, "Measured depth of its shoe.")
                                    .must()),
                    rows(
                                    "intervals",
                                    CASING_INTERVAL,
                                    "Tapered string: stretches from the top down, the last to the shoe. Keys not given in a"
                                            + " stretch are those of the string.")
                            .without("One stretch with the keys of the string."),
                    amount("top_of_cement", Measure.DEPTH, 0, DEEPEST, "Measured depth."),
                    amount(
                            "fluid_behind",
                            Measure.DENSITY,
                            700,
                            2700,
                            "Density of the mud above the cement behind it."),
                    amount("mix_water", Measure.DENSITY, 900, 1300, "Density of the cement's mix water.")
                            .without("No back-up outside the casing, unless back_up is given."),
                    Key.of("back_up", new Nested(BACK_UP, true), "What stands outside the casing against a burst.")
                            .without("The lower of low pore pressure and the mix-water column from ground or seabed."),
                    amount("allowed_burst_share", Measure.NUMBER, 0.01, 1, "Part of the burst rating that may be used.")
                            .without("The string's part of the lowest surface limit."),
                    amount("test_pressure", Measure.PRESSURE_GAUGE, 0, 2e8, "Pressure test at surface."),
                    amount(
                                    "liner_top_rating",
                                    Measure.PRESSURE_DIFFERENCE,
                                    1e5,
                                    4e8,
                                    "What packer and lap of a liner hold from inside.")
                            .without("The liner top's part of the lowest surface limit."),
                    Key.of("price", new Nested(PRICE, true), "What the pipe costs.")
                            .without("Cost of a design.")),
            List.of());

    static final Block WASHOUT = Block.of(
            "washout",
            amount("from", Measure.DEPTH, 0, DEEPEST, "Measured depth.").must(),
            amount("to", Measure.DEPTH, 0, DEEPEST, "Measured depth.").must(),
            amount("diameter", Measure.DIAMETER, 0.05, 1.5, "Hole diameter there.")
                    .must());

    static final Block RHEOMETER = Block.of(
            "rheometer",
            dial("600"),
            dial("300"),
            dial("200"),
            dial("100"),
            dial("60"),
            dial("30"),
            dial("6"),
            dial("3"));

    static final Block EXPANSION = Block.of(
            "expansion",
            amount("compressibility", Measure.COMPRESSIBILITY, 0, 2e-9, "Isothermal compressibility.")
                    .must(),
            amount("thermal_expansion", Measure.THERMAL_EXPANSION, 0, 2e-3, "Thermal expansion.")
                    .must(),
            amount(
                            "reference_pressure",
                            Measure.PRESSURE_ABSOLUTE,
                            1e4,
                            2e8,
                            "Pressure at which the density is stated; without psia or bara a gauge reading.")
                    .must(),
            amount(
                            "reference_temperature",
                            Measure.TEMPERATURE,
                            250,
                            500,
                            "Temperature at which the density is stated.")
                    .must());

    static final Block MUD = Block.of(
            "mud",
            text("name", "What the programme calls it.").must(),
            amount("density", Measure.DENSITY, 700, 2700, "Stated density.").must(),
            Key.of("base", new Choice(MudBase.class), "Continuous phase.").must(),
            Key.of("rheometer", new Nested(RHEOMETER, true), "Dial readings by rotor speed in rpm."),
            Key.of("expansion", new Nested(EXPANSION, true), "Change of density with pressure and temperature.")
                    .without("Density is constant; its shift with depth is not checked."));

    static final Block COMPONENT = Block.of(
            "string_component",
            text("name", "Drill pipe, heavyweight, collars …").must(),
            amount("length", Measure.LENGTH, 0.01, DEEPEST, "Length; the last component reaches to surface.")
                    .must(),
            amount("outside_diameter", Measure.DIAMETER, 0.02, 1.2, "Of the body.")
                    .must(),
            amount("inside_diameter", Measure.DIAMETER, 0, 1.2, "Bore.").must());

    static final Block GAS = Block.of(
            "gas",
            amount("gravity", Measure.NUMBER, 0.55, 1.8, "Density relative to air.")
                    .must(),
            amount("h2s", Measure.NUMBER, 0, 1, "Mole fraction of hydrogen sulphide.")
                    .without("None."),
            amount("co2", Measure.NUMBER, 0, 1, "Mole fraction of carbon dioxide.")
                    .without("None."),
            amount("n2", Measure.NUMBER, 0, 1, "Mole fraction of nitrogen.").without("None."));

    static final Block SLOW_CIRCULATION = Block.of(
            "slow_circulation",
            Key.of("rate", new PumpRate(), "Pump rate; strokes per minute where pump_output is given.")
                    .must(),
            amount("pump_pressure", Measure.PRESSURE_GAUGE, 0, 1e8, "Circulating up riser or open annulus."),
            amount(
                            "choke_line_friction",
                            Measure.PRESSURE_DIFFERENCE,
                            0,
                            5e7,
                            "Loss in the choke line at that rate, as measured.")
                    .without("Subsea: tolerance while circulating."));

    static final Block KILL_MUD = Block.of(
            "kill_mud",
            amount("step", Measure.DENSITY_DIFFERENCE, 0.1, 100, "Step to which its density is rounded up.")
                    .without("0.1 ppg (12 kg/m3)"),
            amount("overbalance", Measure.DENSITY_DIFFERENCE, 0, 300, "Density beyond balance.")
                    .without("None."),
            amount("material", Measure.DENSITY, 2600, 7000, "Density of the weighting material.")
                    .without("4200 kg/m3 (barite)"));

    static final Block KILL_SHEET = Block.of(
            "kill_sheet",
            option("constant", HydrostaticConstant.class, "Gravity, or the rounding of the trade."),
            option("friction", StringFriction.class, "How the slow circulating pressure is shared along the string."),
            Key.of("lines", new Count(1, 500), "Lines of the pressure schedule.")
                    .without(String.valueOf(KillSheetInput.Options.DEFAULT.lines())));

    static final Block CLOSED_WELL = Block.of(
            "closed_well",
            amount("mud_compressibility", Measure.COMPRESSIBILITY, 0, 2e-9, "How the mud gives way to pressure.")
                    .without("That of the mud's expansion, else none."),
            amount(
                            "hole_compliance",
                            Measure.COMPRESSIBILITY,
                            0,
                            1e-8,
                            "Growth of the annulus, open hole and casing, per volume and pressure.")
                    .without("None: the hole is rigid."),
            amount("filtrate_loss", Measure.FLOW_RATE, 0, 0.01, "Lost into the formation while the well is closed.")
                    .without("None."),
            Key.of("float_in_string", new Flag(), "Whether a float closes off the mud in the string.")
                    .without("true"));

    static final Block MIGRATION = Block.of(
            "migration",
            amount("slow", Measure.SPEED, 0, 3, "Slow end of the rise of gas, along hole.")
                    .must(),
            amount("medium", Measure.SPEED, 0, 3, "In between.").must(),
            amount("fast", Measure.SPEED, 0, 3, "Fast end.").must(),
            text("source", "Where the rates come from.").must());

    static final Block VOLUMETRIC = Block.of(
            "volumetric",
            amount("safety", Measure.PRESSURE_DIFFERENCE, 0, 2e7, "Held above the formation pressure.")
                    .must(),
            amount("working", Measure.PRESSURE_DIFFERENCE, 1e4, 2e7, "Height of the window above that.")
                    .must());

    static final Block LUBRICATION = Block.of(
            "lubrication",
            amount("density", Measure.DENSITY, 500, 3000, "Mud that is pumped in on the gas.")
                    .without("The section's mud."),
            amount("largest_step", Measure.VOLUME, 1e-3, 50, "Most that is pumped before bleeding.")
                    .without("What the working pressure allows."),
            amount("left", Measure.VOLUME, 1e-3, 50, "Gas that may be left.").without("0.1 m3"));

    static final Block BULLHEADING = Block.of(
            "bullheading",
            Key.of("rate", new PumpRate(), "Pump rate.").without("The kill rate."),
            amount(
                            "injection_above",
                            Measure.PRESSURE_DIFFERENCE,
                            0,
                            1e8,
                            "Pressure above the formation's at which it takes fluid.")
                    .must());

    static final Block OPERATIONS = Block.of(
            "operations",
            Key.of(
                            "influx",
                            new Word(List.of(REQUIRED, TOLERANCE)),
                            "Which influx is followed: that of the criteria, or" + " the kick tolerance itself.")
                    .without("required, or influx_volume."),
            amount("influx_volume", Measure.VOLUME, 1e-3, 200, "Volume of the influx that is followed, on bottom."),
            Key.of("kill_rate", new PumpRate(), "Pump rate of the kill.")
                    .without("The greatest of the slow circulating rates."),
            amount("surface_lines", Measure.VOLUME, 0, 20, "Volume from the pump to the top of the string.")
                    .without("None: strokes count from the top of the string."),
            Key.of("start_up_steps", new Count(1, 100), "Subsea: steps in which the pump is brought to the kill rate.")
                    .without("4"),
            Key.of("kill_mud", new Nested(KILL_MUD, true), "How kill mud is made."),
            Key.of("kill_sheet", new Nested(KILL_SHEET, true), "Choices of the kill sheet."),
            Key.of("closed_well", new Nested(CLOSED_WELL, true), "What gives way to pressure in the closed well.")
                    .without("Mud by its expansion alone."),
            Key.of("migration", new Nested(MIGRATION, true), "How fast gas rises in the closed well.")
                    .without("500 ft/h, 1000 ft/h and 100 ft/min, from publications."),
            Key.of("volumetric", new Nested(VOLUMETRIC, true), "Window of the volumetric method.")
                    .without("Volumetric method, lubricate and bleed."),
            Key.of("lubrication", new Nested(LUBRICATION, true), "Lubricate and bleed after it."),
            Key.of("bullheading", new Nested(BULLHEADING, true), "Pumping the influx back.")
                    .without("Bullheading."),
            amount("tripping_speed", Measure.SPEED, 1e-3, 10, "Mean speed of the string while it is tripped.")
                    .without("Swab and surge."));

    private static final List<Key> SECTION_COMMON = List.of(
            Key.of("drilling", new Choice(Drilling.class), "Whether the well can be shut in.")
                    .must(),
            Key.of("mud", new Nested(MUD, true), "Mud in the hole.").without("Tolerance, MAASP, pressure window."),
            new Key(
                            "string",
                            new Rows(COMPONENT, true, false, NO_STRING),
                            false,
                            "Components from the bit up; none where no pipe is in the hole.",
                            "")
                    .without("Tolerance."),
            amount("bit_off_bottom", Measure.LENGTH, 0, DEEPEST, "Distance of the bit above bottom at the influx.")
                    .without("On bottom."),
            Key.of("gas", new Nested(GAS, true), "Gas of the influx.").without("Tolerance."),
            rows("slow_circulation", SLOW_CIRCULATION, "Slow circulating rates."),
            amount("pump_output", Measure.VOLUME, 1e-4, 0.5, "Volume per stroke."),
            amount("active_volume", Measure.VOLUME, 0.1, 5000, "Active pit volume."),
            amount("detectable_gain", Measure.VOLUME, 0, 100, "Pit gain at which the crew shuts in."),
            amount(
                            "circulating_overbalance",
                            Measure.PRESSURE_DIFFERENCE,
                            0,
                            2e7,
                            "Held above the kick zone while circulating.")
                    .without("Zero, with a warning."),
            amount("choke_handling_allowance", Measure.PRESSURE_DIFFERENCE, 0, 2e7, "For the choke operator.")
                    .without("Zero, with a warning."),
            text("criteria", "Name of the criteria to be met.").without("Verdict."),
            Key.of(
                            "operations",
                            new Nested(OPERATIONS, true),
                            "How an influx is handled: circulated out, shut in, killed.")
                    .without("What its keys say."));

    static final Block SECTION = new Block(
            "section",
            with(
                    List.of(
                            text("name", "What the programme calls it.").must(),
                            amount("from", Measure.DEPTH, 0, DEEPEST, "Measured depth of the shoe above.")
                                    .must(),
                            amount("to", Measure.DEPTH, 0, DEEPEST, "Measured depth of section TD.")
                                    .must(),
                            amount("bit", Measure.DIAMETER, 0.05, 1.5, "Nominal hole size.")
                                    .must(),
                            amount(
                                            "hole_diameter",
                                            Measure.DIAMETER,
                                            0.05,
                                            1.5,
                                            "Mean diameter of the hole as drilled.")
                                    .without("The bit's."),
                            rows("washouts", WASHOUT, "Wider stretches."),
                            amount(
                                            "influx_depth",
                                            Measure.DEPTH,
                                            0,
                                            DEEPEST,
                                            "Measured depth of the influx in the open hole.")
                                    .without("Section TD.")),
                    SECTION_COMMON.toArray(Key[]::new)),
            List.of());

    static final Block SECTION_DEFAULTS = new Block("section_defaults", SECTION_COMMON, List.of());

    static final Block DESIGN = Block.of(
            "design",
            text("name", "Name of the casing design.").must(),
            new Key(
                    "strings",
                    new Rows(CASING_STRING, false, false, ""),
                    true,
                    "Strings in the order they are set. One named in casing_strings takes its keys from there, but for"
                            + " those given here.",
                    ""),
            new Key(
                    "sections",
                    new Rows(SECTION, false, false, ""),
                    false,
                    "Hole sections of this design, in order. One named in the sections of the case takes its keys from"
                            + " there, but for those given here.",
                    "The sections of the case."));

    private static final Key RATING = amount("rating", Measure.PRESSURE_GAUGE, 1e5, 3e8, "Rated working pressure.");

    static final Block RATED = Block.of(
            "rated_equipment",
            text("name", "What it is.").must(),
            RATING.must(),
            text("source", "Certificate or data sheet."));

    static final Block LINE = Block.of(
            "line",
            text("name", "What it is.").must(),
            amount("length", Measure.LENGTH, 0, 5000, "Stack to surface.").must(),
            amount("inside_diameter", Measure.DIAMETER, 0.01, 1, "Bore.").must(),
            RATING.without("Its part of the lowest surface limit."),
            text("source", "Certificate or data sheet of the rating."),
            amount("fluid", Measure.DENSITY, 700, 2700, "Density of the fluid standing in it.")
                    .without("The mud in the well."));

    static final Block ELEMENT = Block.of(
            "stack_element",
            text("name", "What it is.").must(),
            Key.of("type", new Choice(StackElement.Type.class), "What it does.").must(),
            RATING.without("Its part of the stack's rating."),
            text("source", "Certificate or data sheet of the rating."),
            amount("bore", Measure.DIAMETER, 0.05, 1, "Through bore."),
            amount("smallest_pipe", Measure.DIAMETER, 0.02, 1, "Smallest pipe its rams close on."),
            amount("largest_pipe", Measure.DIAMETER, 0.02, 1, "Largest pipe its rams close on."));

    static final Block SEPARATOR = Block.of(
            "gas_separator",
            text("name", "What it is.").must(),
            amount("mud_leg", Measure.LENGTH, 0.1, 30, "Height of mud that the gas would have to push out.")
                    .without("Gas at surface against the separator."),
            amount("mud_leg_fluid", Measure.DENSITY, 500, 2700, "Density of the fluid in the mud leg.")
                    .without("The mud in the well."),
            amount("vent_length", Measure.LENGTH, 1, 500, "Length of the vent line, with the pipe its bends stand for.")
                    .without("Pressure in the separator."),
            amount("vent_diameter", Measure.DIAMETER, 0.05, 1, "Inside diameter of the vent line.")
                    .without("Pressure in the separator."),
            amount("gas_capacity", Measure.GAS_RATE, 1e-3, 100, "Gas rate that the maker states."),
            text("source", "Data sheet."));

    static final Block EQUIPMENT = Block.of(
            "equipment",
            Key.of("wellhead", new Nested(RATED, true), "Weakest wellhead section in use.")
                    .without("Its part of the lowest surface limit."),
            Key.of("choke_manifold", new Nested(RATED, true), "Choke manifold and surface line.")
                    .without("Its part of the lowest surface limit."),
            Key.of("choke_line", new Nested(LINE, true), "From the stack to surface.")
                    .without("Its part of the lowest surface limit of a subsea well."),
            Key.of("kill_line", new Nested(LINE, true), "From the stack to surface."),
            Key.of("riser", new Nested(LINE, true), "From a subsea stack to surface."),
            rows("stack", ELEMENT, "BOP stack from the bottom up.")
                    .without("The BOP's part of the lowest surface limit."),
            Key.of("mud_pump", new Nested(RATED, true), "Pump and its lines, as the relief valve is set.")
                    .without("Bullheading."),
            Key.of("gas_separator", new Nested(SEPARATOR, true), "Separator behind the choke manifold.")
                    .without("Gas at surface against the separator."));

    static final Block CRITERIA = Block.of(
            "criteria",
            text("name", "Name by which sections choose it.").must(),
            text("owner", "Who answers for it.").must(),
            text("source", "Document in which it is written.").must(),
            text("place", "Page or clause there."),
            amount("drilled_tolerance", Measure.VOLUME, 0, 200, "Least influx when drilled, at bottom hole.")
                    .without("Verdict on the drilled kick."),
            amount("swabbed_tolerance", Measure.VOLUME, 0, 200, "Least influx when swabbed, at bottom hole.")
                    .without("Verdict on the swabbed kick."),
            amount("kick_intensity", Measure.DENSITY_DIFFERENCE, 0, 1000, "Pressure of the drilled kick above the mud.")
                    .without("Drilled kick (by default method)."),
            amount("strength_margin", Measure.PRESSURE_DIFFERENCE, 0, 3e7, "Kept below the formation strength.")
                    .without("Zero, with a warning."),
            amount("trip_margin", Measure.DENSITY_DIFFERENCE, 0, 1000, "Kept between mud and pore pressure.")
                    .without("Zero."),
            amount(
                            "surge_margin",
                            Measure.DENSITY_DIFFERENCE,
                            0,
                            1000,
                            "Kept between mud and strength less strength_margin.")
                    .without("Zero."));

    static final Block OPTIONS = Block.of(
            "options",
            option("definition", MethodOptions.ToleranceDefinition.class, "What counts as kick tolerance."),
            option("drilled_pressure", MethodOptions.DrilledPressure.class, "Formation pressure of a drilled kick."),
            option("weak_point", MethodOptions.WeakPointChoice.class, "Which depths may break."),
            option("estimates", MethodOptions.Estimates.class, "Which end of the estimates decides."),
            option("gas_model", MethodOptions.GasModel.class, "How the gas behaves."),
            option("circulation", CirculationMethod.class, "How the influx is circulated out."),
            option("mud_density", MethodOptions.MudDensityModel.class, "Whether mud density moves with depth."),
            Key.of(
                            "masp",
                            new Word(List.of(GAS_TO_SURFACE, KICK_LIMITED, FRACTURE_LIMITED, MUD_AND_GAS)),
                            "Maximum anticipated surface pressure to be shown beside gas to surface.")
                    .without(GAS_TO_SURFACE),
            amount("masp_influx", Measure.VOLUME, 0.01, 200, "Influx of masp: kick_limited.")
                    .without("Needed there."),
            amount("masp_mud_share", Measure.NUMBER, 0, 1, "Part of the column that mud fills, of masp: mud_and_gas.")
                    .without("Needed there."),
            option(
                    "equivalent_density_from",
                    EquivalentZero.Place.class,
                    "Where equivalent densities of results count from; on land the mudline is ground level."),
            Key.of(
                            "influx",
                            new Word(List.of(SINGLE_BUBBLE, DISTRIBUTED)),
                            "How the gas of an influx stands in the annulus.")
                    .without(SINGLE_BUBBLE),
            amount(
                            "gas_fraction",
                            Measure.NUMBER,
                            0.05,
                            1,
                            "Part of the annulus that gas fills at the influx at shut-in, of influx: distributed.")
                    .without("Needed there."),
            option(
                    "annular_friction",
                    MethodOptions.AnnularFriction.class,
                    "Whether friction in the annulus loads the formation while circulating."),
            Key.of("seawater_credit", new Flag(), "Whether the sea backs up a subsea wellhead and BOP.")
                    .without("false"),
            amount("depth_step", Measure.LENGTH, 0.1, 1000, "Greatest distance of depths along a section.")
                    .without("30 m"),
            Key.of("depth_count", new Count(1, 10_000), "Least number of depths along a section.")
                    .without("200"));

    private static final List<String> LEVELS = List.of("datum", "mean_sea_level", "mudline", "ground");

    static final Block SEDIMENT = Block.of(
                    "sediment",
                    amount("mean_density", Measure.DENSITY, 1200, 3300, "One bulk density from ground or seabed down."),
                    amount(
                            "surface_porosity",
                            Measure.NUMBER,
                            0,
                            0.95,
                            "Porosity at ground or seabed, falling exponentially with depth."),
                    amount("decay_length", Measure.LENGTH, 100, 100_000, "Depth over which porosity falls to 1/e.")
                            .without("Needed with surface_porosity."),
                    amount("grain_density", Measure.DENSITY, 2000, 3500, "Density of the grains.")
                            .without("Needed with surface_porosity."),
                    amount(
                                    "uncertainty",
                                    Measure.DENSITY_DIFFERENCE,
                                    0,
                                    500,
                                    "By how much its mean density may be off, either way.")
                            .without("None."))
            .exactlyOne("mean_density", "surface_porosity");

    static final Block NORMAL_TREND = Block.of(
                    "normal_trend",
                    amount(
                            "from_tvd",
                            Measure.DEPTH,
                            0,
                            DEEPEST,
                            "Top of the interval that the trend is fitted to, below the datum of its well."),
                    amount("to_tvd", Measure.DEPTH, 0, DEEPEST, "Bottom of that interval.")
                            .without("Needed with from_tvd."),
                    amount(
                            "slowness_at_ground",
                            Measure.SLOWNESS,
                            1e-4,
                            1e-3,
                            "A stated trend of sonic slowness: its value at ground or seabed."),
                    amount(
                            "resistivity_at_ground",
                            Measure.RESISTIVITY,
                            0.01,
                            1e5,
                            "A stated trend of resistivity: its value at ground or seabed."),
                    amount(
                                    "length",
                                    Measure.LENGTH,
                                    100,
                                    100_000,
                                    "Depth over which slowness falls to 1/e, or resistivity rises to e times as much.")
                            .without("Needed with a stated trend."),
                    amount("scatter", Measure.NUMBER, 0, 0.5, "Standard deviation of readings about a stated trend.")
                            .without("None."))
            .exactlyOne("from_tvd", "slowness_at_ground", "resistivity_at_ground");

    static final Block LOG_PRESSURE = Block.of(
            "log_pressure",
            Key.of(
                            "method",
                            new Word(List.of("eaton_sonic", "eaton_resistivity", "equivalent_depth")),
                            "How pore pressure is read from the log.")
                    .must(),
            Key.of("curve", new Word(List.of("sonic", "resistivity")), "Curve that the equivalent depth is read from.")
                    .without("Needed with equivalent_depth."),
            Key.of("normal_trend", new Nested(NORMAL_TREND, true), "Normal compaction trend of that curve.")
                    .must(),
            amount("exponent", Measure.NUMBER, 0.3, 6, "Exponent of Eaton's equation.")
                    .without("That of the paper: 3 for sonic, 1.2 for resistivity."),
            Key.of(
                            "calibrate",
                            new Flag(),
                            "Whether the exponent is that of the formation pressures measured in the well, once there are any.")
                    .without("false"),
            amount(
                            "uncertainty",
                            Measure.NUMBER,
                            0,
                            0.5,
                            "By how much a reading over its trend may be off, as a share.")
                    .without("The scatter of the readings about the trend."));

    static final Block OFFSET_WELL = Block.of(
                    "offset_well",
                    text("name", "Name by which tables name it; a sidetrack is a well of its own.")
                            .must(),
                    amount("distance", Measure.LENGTH, 0, 1e6, "Distance to the planned well.")
                            .must(),
                    amount("elevation", Measure.LENGTH, -450, 6000, "Height of its datum above mean sea level.")
                            .must(),
                    amount("ground_level", Measure.DEPTH, 0, 50, "Land well: depth of the ground below its datum."),
                    amount("water_depth", Measure.LENGTH, 1, 4000, "Well at sea: mean sea level to seabed."),
                    Key.of("survey", new Nested(SURVEY, true), "Path of its hole.")
                            .without("Rows with measured depths are left out."),
                    Key.of(
                                    "equivalent_density_datum",
                                    new Choice(EquivalentZero.Place.class),
                                    "Where equivalent densities of its pore pressure count from.")
                            .without("Its datum."),
                    Key.of(
                                    "pore_pressure",
                                    new Nested(PORE_PRESSURE, true),
                                    "Its pore pressure as judged after drilling; stress ratios of its tests rest on it.")
                            .without("Needed, unless pore_pressure_from is log."),
                    Key.of(
                                    "pore_pressure_from",
                                    new Word(List.of("profile", "log")),
                                    "What its pore pressure is made of: pore_pressure, or the log between its first and last"
                                            + " reading, with pore_pressure above and below, or hydrostatic pressure above.")
                            .without("profile"),
                    Key.of("log_pressure", new Nested(LOG_PRESSURE, true), "How pore pressure is read from its log.")
                            .without("None is read."),
                    amount(
                                    "density_uncertainty",
                                    Measure.DENSITY_DIFFERENCE,
                                    0,
                                    300,
                                    "By how much the whole of its density log may be off, either way.")
                            .without("None."),
                    Key.of(
                                    "sediment",
                                    new Nested(SEDIMENT, true),
                                    "Its sediment, for its overburden where no density log is.")
                            .without("That of offset_evidence."),
                    rowsOrFile("tops", TOP, "Its formation tops, downwards.")
                            .without("Needed where matching is formation_tops."))
            .exactlyOne("ground_level", "water_depth");

    static final Block LEVEL_WORD = Block.of(
            "level_word",
            text("word", "As it stands in the column.").must(),
            Key.of("means", new Word(LEVELS), "What it stands for.").must());

    static final Block STANDING_WORD = Block.of(
            "standing_word",
            text("word", "As it stands in the column.").must(),
            Key.of("means", new Choice(Standing.class), "What it stands for.").must());

    static final Block QUALITY_WORD = Block.of(
            "quality_word",
            text("word", "As it stands in the column.").must(),
            Key.of("means", new Choice(Quality.class), "What it stands for.").must());

    static final Block DEPTH_COLUMN = Block.of(
            "depth_column",
            text("column", "Heading of the column.").must(),
            Key.of("unit", new UnitOf(Measure.DEPTH), "Unit of its numbers.").must(),
            Key.of("kind", new Word(List.of("measured", "vertical")), "Along hole or vertical.")
                    .must(),
            Key.of("below", new Word(LEVELS), "What depths are measured from.").without("The datum of their well."),
            text("below_column", "Column that says it row by row."),
            rows("below_words", LEVEL_WORD, "What the words of that column stand for."));

    static final Block PRESSURE_COLUMN = Block.of(
            "pressure_column",
            text("column", "Heading of the column.").must(),
            text("unit", "Unit of its numbers; psi and bar are read as gauge, psia and bara as absolute.")
                    .must(),
            Key.of(
                            "kind",
                            new Word(List.of("equivalent", "downhole", "surface")),
                            "Equivalent density, pressure at depth, or pressure at surface on a mud.")
                    .must(),
            Key.of("below", new Word(LEVELS), "Where equivalent densities count from.")
                    .without("The datum of their well."),
            text("mud_column", "Column of the mud in the hole.").without("Needed with surface."),
            Key.of("mud_unit", new UnitOf(Measure.DENSITY), "Unit of its numbers.")
                    .without("Needed with surface."));

    static final Block VOLUME_COLUMN = Block.of(
            "volume_column",
            text("column", "Heading of the column.").must(),
            Key.of("unit", new UnitOf(Measure.VOLUME), "Unit of its numbers.").must());

    static final Block DIAMETER_COLUMN = Block.of(
            "diameter_column",
            text("column", "Heading of the column.").must(),
            Key.of("unit", new UnitOf(Measure.DIAMETER), "Unit of its numbers.").must());

    static final Block TIME_COLUMN = Block.of(
            "time_column",
            text("column", "Heading of the column.").must(),
            Key.of("unit", new UnitOf(Measure.TIME), "Unit of its numbers.").must());

    static final Block OFFSET_TABLE = Block.of(
            "offset_table",
            Key.of(
                            "holds",
                            new Word(List.of(
                                    "strength_tests",
                                    "pumping_curves",
                                    "formation_pressures",
                                    "losses",
                                    "kicks",
                                    "mud_weights",
                                    "casing_programme")),
                            "What its rows are.")
                    .must(),
            text("file", "Such a table in the case directory, CSV or .xlsx, read always.")
                    .without("None."),
            text("drop", "Name of such a table in a folder that is handed in with the case.")
                    .without("None."),
            text("sheet", "Sheet of a workbook (.xlsx) that has several.").without("The only one."),
            Key.of("delimiter", new Word(List.of("comma", "semicolon", "tab")), "Between cells.")
                    .without("comma"),
            Key.of("decimal_mark", new Word(List.of("point", "comma")), "What parts the whole from the fraction.")
                    .without("point"),
            text("missing", "Signs for a missing value besides the empty cell, with spaces between them.")
                    .without("None."),
            Key.of("lines_of_units", new Count(0, 10), "Lines without values below the heading.")
                    .without("0"),
            Key.of(
                            "bad_rows",
                            new Word(List.of("refuse_file", "leave_out")),
                            "What to do with rows that cannot be read, up to one in ten.")
                    .without("refuse_file"),
            text("well_column", "Column that names the offset well.").must(),
            Key.of("depth", new Nested(DEPTH_COLUMN, true), "Column of the depth.")
                    .must(),
            Key.of("pressure", new Nested(PRESSURE_COLUMN, true), "Column of the pressure.")
                    .without("Needed, but for a casing_programme."),
            Key.of(
                            "outside_diameter",
                            new Nested(DIAMETER_COLUMN, true),
                            "Casing programme: outside diameter; rows without one are left out as open hole.")
                    .without("Not told; all rows are casing."),
            Key.of("volume", new Nested(VOLUME_COLUMN, true), "Pumping curves: volume pumped.")
                    .without("Needed with pumping_curves."),
            Key.of("time", new Nested(TIME_COLUMN, true), "Pumping curves: time since the pump stopped.")
                    .without("No readings with the pump stopped."),
            Key.of("leak_off", new Word(List.of("departure", "two_lines")), "Pumping curves: how leak-off is picked.")
                    .without("departure"),
            text("name_column", "Column that names the test or point.").without("Named by its depth."),
            text("source_column", "Column that names the document.").without("The file."),
            text("place_column", "Column of page or line there.").without("None."),
            Key.of("standing", new Choice(Standing.class), "What all tests are.")
                    .without("As standing_column says."),
            text("standing_column", "Column that says what a test is."),
            rows("standing_words", STANDING_WORD, "What the words of that column stand for."),
            Key.of("quality", new Choice(Quality.class), "What all rows are worth.")
                    .without("good"),
            text("quality_column", "Column that says what a row is worth; rejected rows are left out."),
            rows("quality_words", QUALITY_WORD, "What the words of that column stand for."));

    static final Block DENSITY_CURVE = curve("density_curve", Measure.DENSITY);
    static final Block SONIC_CURVE = curve("sonic_curve", Measure.SLOWNESS);
    static final Block RESISTIVITY_CURVE = curve("resistivity_curve", Measure.RESISTIVITY);

    private static Block curve(String name, Measure measure) {
        return Block.of(
                name,
                text("column", "Mnemonic of the curve.").must(),
                Key.of("unit", new UnitOf(measure), "Unit of its numbers.").must());
    }

    static final Block SHALE_CURVE = Block.of(
            "shale_curve",
            text("column", "Mnemonic of the curve, such as that of gamma ray.").must(),
            text("unit", "Unit of its numbers and of the cut-off, as the log has it.")
                    .must(),
            amount("cut_off", Measure.NUMBER, -1e6, 1e6, "Reading that parts shale from other rock, without its unit.")
                    .must(),
            Key.of(
                            "shale",
                            new Word(List.of("above", "below")),
                            "Whether shale reads above or below it; the cut-off is shale.")
                    .without("above"));

    static final Block OFFSET_LOG = Block.of(
            "offset_log",
            text("well", "Offset well that it was run in.").must(),
            text("file", "Such a log in the case directory, LAS, read always.").without("None."),
            text("drop", "Name of such a log in a folder that is handed in with the case.")
                    .without("None."),
            Key.of("depth", new Nested(DEPTH_COLUMN, true), "Curve of the depth.")
                    .must(),
            Key.of("density", new Nested(DENSITY_CURVE, true), "Bulk density, for the overburden.")
                    .without("Overburden by sediment."),
            Key.of("sonic", new Nested(SONIC_CURVE, true), "Sonic slowness.").without("None."),
            Key.of("resistivity", new Nested(RESISTIVITY_CURVE, true), "Deep resistivity.")
                    .without("None."),
            Key.of(
                            "shale",
                            new Nested(SHALE_CURVE, true),
                            "Curve that tells shale: sonic and resistivity count in it alone.")
                    .without("All readings count as shale."),
            amount(
                            "step",
                            Measure.LENGTH,
                            0.5,
                            100,
                            "Height of the blocks of vertical depth that the log is averaged in.")
                    .without("10 m"),
            Key.of("spikes", new Word(List.of("count", "leave_out")), "What to do with readings that stand apart.")
                    .without("count"),
            Key.of(
                            "bad_readings",
                            new Word(List.of("refuse_file", "leave_out")),
                            "What to do with readings out of range, up to one in ten.")
                    .without("refuse_file"));

    static final Block OFFSET_EVIDENCE = Block.of(
            "offset_evidence",
            option("pore_pressure", EvidenceUse.class, "What the pore pressure is made of."),
            option("strength", EvidenceUse.class, "What the strength is made of."),
            Key.of(
                            "weak_zones",
                            new Word(List.of("as_given", "tested")),
                            "Whether a leak-off test made in a named weak zone replaces its estimate.")
                    .without("as_given"),
            Key.of("matching", new Word(List.of("below_mudline", "formation_tops")), "Which depths correspond.")
                    .without("below_mudline"),
            option("log_pressures", LogUse.class, "What pore pressures read from logs of offset wells do."),
            option("bounds", BoundUse.class, "What losses and kicks of offset wells do."),
            amount("window", Measure.LENGTH, 1, 2000, "Vertical distance up to which evidence counts.")
                    .must(),
            amount("half_distance", Measure.LENGTH, 1, 1e6, "Distance at which a well counts half of one next door.")
                    .must(),
            amount("ratio_conflict", Measure.NUMBER, 0.01, 1, "Difference of stress ratios listed as a conflict.")
                    .without("0.1"),
            amount(
                            "pressure_conflict",
                            Measure.PRESSURE_DIFFERENCE,
                            1e4,
                            1e8,
                            "Difference of excess pressures listed as a conflict.")
                    .without("2 MPa"),
            amount(
                            "water_density",
                            Measure.DENSITY,
                            950,
                            1250,
                            "Mean density of the pore water, for hydrostatic pressure.")
                    .must(),
            Key.of("sediment", new Nested(SEDIMENT, true), "Sediment of the planned well, for its overburden.")
                    .must(),
            new Key("wells", new Rows(OFFSET_WELL, true, false, ""), true, "Offset wells.", ""),
            rows("tables", OFFSET_TABLE, "How their tables are written.").without("None are read."),
            rows("logs", OFFSET_LOG, "How their logs are written.").without("None are read."));

    static final Block CASE = Block.of(
            "case",
            Key.of("title_block", new Nested(TITLE_BLOCK, true), "Title block.").must(),
            Key.of("units", new NameOrNested(UnitSystem.names(), UNITS), "Units in which results are shown.")
                    .must(),
            Key.of("datum", new Nested(DATUM, true), "Zero of all depths.").must(),
            Key.of("survey", new Nested(SURVEY, true), "Path of the hole.").must(),
            Key.of("earth", new Nested(EARTH, true), "The rock.")
                    .without("Every tolerance, MAASP and pressure window."),
            new Key(
                    "casing_strings",
                    new Rows(CASING_STRING, false, false, ""),
                    false,
                    "Strings that designs may name.",
                    ""),
            Key.of(
                    "section_defaults",
                    new Nested(SECTION_DEFAULTS, false),
                    "Keys of every section that does not give its own."),
            new Key(
                    "sections",
                    new Rows(SECTION, false, false, ""),
                    false,
                    "Hole sections of every design that does not list its own.",
                    ""),
            new Key("designs", new Rows(DESIGN, true, false, ""), true, "Casing designs, the base design first.", ""),
            Key.of("offset_evidence", new Nested(OFFSET_EVIDENCE, true), "What neighbouring wells measured.")
                    .without("The rock is as predicted."),
            Key.of("equipment", new Nested(EQUIPMENT, true), "Pressure equipment.")
                    .without("Lowest surface limit but for formation and casing."),
            rows("criteria", CRITERIA, "What sections must meet: your rules, never the library's.")
                    .without("Every verdict."),
            Key.of("options", new Nested(OPTIONS, true), "Choices of method.").without("The defaults."));

    private CaseKeys() {}

    /** Every block of keys, each once, the case first. */
    static List<Block> blocks() {
        Set<Block> found = new LinkedHashSet<>();
        collect(CASE, found);
        return List.copyOf(found);
    }

    private static void collect(Block block, Set<Block> found) {
        if (!found.add(block)) {
            return;
        }
        for (Key key : block.keys()) {
            if (key.form() instanceof Nested nested) {
                collect(nested.block(), found);
            } else if (key.form() instanceof Rows rows) {
                collect(rows.block(), found);
            } else if (key.form() instanceof Csv csv) {
                collect(csv.block(), found);
            } else if (key.form() instanceof NameOrNested either) {
                collect(either.block(), found);
            }
        }
    }

    private static Key text(String name, String meaning) {
        return Key.of(name, new Text(), meaning);
    }

    private static Key amount(String name, Measure measure, double lowest, double highest, String meaning) {
        return Key.of(name, new Amount(measure, lowest, highest), meaning);
    }

    private static Key rock(String name, String meaning) {
        return Key.of(name, new RockPressure(), meaning);
    }

    private static Key tvd(String name) {
        return amount(name, Measure.DEPTH, 0, DEEPEST, "Vertical depth below the datum.");
    }

    private static Key tvdss(String name) {
        return amount(name, Measure.DEPTH, -6000, DEEPEST, "Vertical depth below mean sea level.");
    }

    private static Key dial(String rpm) {
        return amount(rpm, Measure.NUMBER, 0, 400, "Dial reading at " + rpm + " rpm.");
    }

    private static Key rows(String name, Block block, String meaning) {
        return Key.of(name, new Rows(block, true, false, ""), meaning);
    }

    private static Key rowsOrFile(String name, Block block, String meaning) {
        return Key.of(name, new Rows(block, true, true, ""), meaning);
    }

    private static Key unit(String name, Measure measure) {
        return Key.of(name, new UnitOf(measure), "Unit shown.").without("That of the base.");
    }

    private static Key option(String name, Class<? extends Enum<?>> type, String meaning) {
        return Key.of(name, new Choice(type), meaning).without(Choice.name(type.getEnumConstants()[0]));
    }

    private static List<Key> with(List<Key> keys, Key... more) {
        List<Key> all = new ArrayList<>(keys);
        all.addAll(List.of(more));
        return all;
    }
}
