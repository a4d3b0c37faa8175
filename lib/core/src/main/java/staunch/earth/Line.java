package staunch.earth;

import staunch.units.Physics;

/** Straight line of absolute pressure against vertical depth. */
record Line(double atDatum, double slope) {
    /** Line of a constant equivalent density below the datum, gauge pressure zero at the datum. */
    static Line equivalent(double density) {
        return new Line(Physics.ATMOSPHERE, density * Physics.GRAVITY);
    }

    double at(double verticalDepth) {
        return atDatum + slope * verticalDepth;
    }
}
