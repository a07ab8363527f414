package spoonfall.learn;

/**
 * One belief about a cook's taste.
 *
 * @param centreC the rise in °C that is right for a usual fruit
 * @param slope by how much a rise of 1 °C moves the log odds of a firmer set
 * @param halfRight half the width of "right" on that scale
 * @param soft the width of "soft" on that scale
 * @param firm the width of "firm" on that scale
 * @param shiftsC how far each fruit differs, in °C
 */
@SuppressWarnings("ArrayRecordComponent") // thousands of them, made and read within this package
record Taste(double centreC, double slope, double halfRight, double soft, double firm, double[] shiftsC) {

    /** Adds the chances of the five outcomes at {@code aboveC}, °C above what is right, to {@code sums}. */
    void addChances(double aboveC, double[] sums) {
        double place = slope * aboveC;
        double belowSoft = SetModel.logistic(-halfRight - soft - place);
        double belowRight = SetModel.logistic(-halfRight - place);
        double belowFirm = SetModel.logistic(halfRight - place);
        double belowStiff = SetModel.logistic(halfRight + firm - place);
        sums[0] += belowSoft;
        sums[1] += belowRight - belowSoft;
        sums[2] += belowFirm - belowRight;
        sums[3] += belowStiff - belowFirm;
        sums[4] += 1 - belowStiff;
    }

    /** The chance of "right" at {@code aboveC}, °C above what is right. */
    double right(double aboveC) {
        double place = slope * aboveC;
        return SetModel.logistic(halfRight - place) - SetModel.logistic(-halfRight - place);
    }
}
