package spoonfall.estimate.burner;

import java.util.Arrays;

/**
 * Finds a steady beat in points that come more or less evenly: a discrete Fourier transform that forgets, one step for each
 * point, at frequencies so close that no beat falls between them. A beat is there when one frequency has so much of all the
 * variance that noise hardly ever would (Fisher's test of a periodogram's largest ordinate, 1929; from memory).
 */
final class Beat {
    private static final double LONGEST_S = 110;
    private static final double APART_HZ = 0.0008;

    /** Up to one of 18 s. */
    private static final int PITCHES = 58;

    /** Of independent points the largest share is e times rarer for each such part of their number that it is larger. */
    private static final double SURE = 11;

    private static final double LEAST_SHARE = 0.45;
    private static final double STAYS_SHARE = 0.3;
    private static final double LEAST_C = 0.08;
    private static final int LEAST_POINTS = 24;

    /** It must stay so for such a part of itself: two or three dips by chance do not. */
    private static final double LASTS_PART = 0.3;

    private static final double SAME_S = 0.05;

    private final double[] real = new double[PITCHES];
    private final double[] imaginary = new double[PITCHES];
    private final double[] cosines = new double[PITCHES];
    private final double[] sines = new double[PITCHES];
    private double turnedS = Double.NaN;
    private double sum;
    private double squares;
    private int points;
    private double sureForS;
    private boolean seen;
    private double periodS;

    /** Forgets the way here. */
    void forget() {
        Arrays.fill(real, 0);
        Arrays.fill(imaginary, 0);
        sum = 0;
        squares = 0;
        points = 0;
        sureForS = 0;
        seen = false;
    }

    /**
     * Takes a point.
     *
     * @param s seconds since the one before
     * @param keeps what part of the past still counts
     * @param weight how many points count by now, this one among them
     * @param offC how far it lies from the mean, in °C
     */
    void point(double s, double keeps, double weight, double offC) {
        turn(s);
        int loudest = 0;
        double most = -1;
        for (int i = 0; i < PITCHES; i++) {
            double turned = real[i] * cosines[i] - imaginary[i] * sines[i];
            imaginary[i] = keeps * (real[i] * sines[i] + imaginary[i] * cosines[i]);
            real[i] = keeps * turned + offC;
            double power = real[i] * real[i] + imaginary[i] * imaginary[i];
            if (power > most) {
                most = power;
                loudest = i;
            }
        }
        sum = keeps * sum + offC;
        squares = keeps * squares + offC * offC;
        points++;
        periodS = 1 / hertz(loudest);
        judge(s, weight, loudest > 0, 2 * Math.sqrt(most) / weight);
    }

    /** Whether there is one. */
    boolean seen() {
        return seen;
    }

    /** How long it is, in seconds; tells something only when one is seen. */
    double periodS() {
        return periodS;
    }

    private void judge(double s, double weight, boolean inside, double amplitudeC) {
        double mean = sum / weight;
        double variance = squares / weight - mean * mean;
        double share = variance <= 0 ? 0 : amplitudeC * amplitudeC / 2 / variance;
        boolean sure = inside
                && points >= LEAST_POINTS
                && share > LEAST_SHARE
                && share * weight > SURE
                && amplitudeC > LEAST_C;
        sureForS = sure ? sureForS + s : 0;
        seen = sureForS > LASTS_PART * periodS || (seen && share > STAYS_SHARE && amplitudeC > LEAST_C / 2);
    }

    /** Works out how far each frequency turns in {@code s} seconds: one from the other, since a cosine takes far longer. */
    private void turn(double s) {
        if (Math.abs(s - turnedS) < SAME_S) {
            return;
        }
        turnedS = s;
        double cosine = Math.cos(2 * Math.PI * hertz(0) * s);
        double sine = Math.sin(2 * Math.PI * hertz(0) * s);
        double cosineApart = Math.cos(2 * Math.PI * APART_HZ * s);
        double sineApart = Math.sin(2 * Math.PI * APART_HZ * s);
        for (int i = 0; i < PITCHES; i++) {
            cosines[i] = cosine;
            sines[i] = sine;
            double next = cosine * cosineApart - sine * sineApart;
            sine = cosine * sineApart + sine * cosineApart;
            cosine = next;
        }
    }

    private static double hertz(int pitch) {
        return 1 / LONGEST_S + pitch * APART_HZ;
    }
}
