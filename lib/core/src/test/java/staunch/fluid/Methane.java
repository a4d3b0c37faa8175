package staunch.fluid;

/** Pure methane, critical point and molar mass of Setzmann and Wagner, J. Phys. Chem. Ref. Data 20 (1991) 1061. */
final class Methane {
    static final PseudoCritical CRITICAL = new PseudoCritical(190.564, 4.5992e6);
    static final double MOLAR_MASS = 0.0160428;

    private Methane() {}

    static RealGas gas() {
        return RealGas.of(MOLAR_MASS, CRITICAL, DeviationFactor.DRANCHUK_ABOU_KASSEM);
    }
}
