package staunch.fluid;

/** Continuous phase of a drilling fluid. */
public enum MudBase {
    WATER,
    OIL,
    SYNTHETIC;

    /** Whether hydrocarbon gas dissolves in it to a degree that hides a kick. */
    public boolean dissolvesGas() {
        return this != WATER;
    }
}
