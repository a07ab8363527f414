package spoonfall.kitchen.again;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import spoonfall.calibration.Correction;
import spoonfall.cook.Stage;
import spoonfall.cook.Unrecorded;
import spoonfall.kitchen.cook.Cook;
import spoonfall.kitchen.plan.KitchenPlan;
import spoonfall.kitchen.thermometer.Thermometer;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.log.CookBasis;
import spoonfall.log.CookHeader;
import spoonfall.log.CookInput;
import spoonfall.log.CookJson;
import spoonfall.log.UnfinishedCook;
import spoonfall.probe.Reading;

/** Going on with a cook that an earlier run of the service left: whether to, and what it needs on the way. */
final class Resumption {
    /** A pan that had come off the heat is soon washed. */
    static final Duration WITHIN_OFF_THE_HEAT = Duration.ofMinutes(15);

    private static final Logger LOG = LoggerFactory.getLogger(Resumption.class);

    private final UnfinishedCook left;
    private final KitchenPlan plan;
    private final Thermometers thermometers;
    private final Map<String, Correction> corrections;
    private final Set<String> unknown = new HashSet<>();
    private final long originNanos;
    private CookBasis basis;

    /**
     * What begins where a cook was left.
     *
     * @param atNanos now, on the readings' scale
     */
    Resumption(UnfinishedCook left, KitchenPlan plan, Thermometers thermometers, long atNanos) {
        this.left = left;
        this.plan = plan;
        this.thermometers = thermometers;
        corrections = new HashMap<>(left.header().corrections());
        long awayMillis = (long) (left.away().toMillis() * plan.speed());
        originNanos = atNanos - (left.aliveMillis() + awayMillis) * 1_000_000L;
        basis = basis(left.header().basis());
    }

    /** Whether a cook that was left is still this kitchen's. */
    static boolean worthwhile(UnfinishedCook left, KitchenPlan plan, Thermometers thermometers) {
        CookHeader header = left.header();
        return plan.isStill(left.away(), header.batch(), header.source(), header.speed())
                && header.basis().probes().equals(thermometers.cookBasis().probes());
    }

    /** Whether the pan has come off the heat, and so long ago that the next one is on. */
    static boolean over(UnfinishedCook left, Stage stage) {
        return stage == Stage.OFF_THE_HEAT && left.away().compareTo(WITHIN_OFF_THE_HEAT) > 0;
    }

    /** The cook as it began. */
    Cook cook() {
        CookHeader header = left.header();
        return Cook.start(header.basis().settings(), header.basis().trusts(), originNanos, header.startedAt());
    }

    /** Takes over what the cook is measured against. */
    CookBasis basis(CookBasis next) {
        basis = next;
        thermometers.restore(next);
        return next;
    }

    /** What the cook was last measured against. */
    CookBasis basis() {
        return basis;
    }

    /** Whether this run was started with other words of the kitchen than the one that left the cook. */
    boolean askedOtherwise() {
        return !plan.settings().equals(left.header().asked());
    }

    /** What made readings true, then. */
    Map<String, Correction> corrections() {
        return corrections;
    }

    /** What makes the readings of a thermometer true has changed. */
    void correct(String probe, Optional<Correction> correction) {
        correction.ifPresentOrElse(one -> corrections.put(probe, one), () -> corrections.remove(probe));
    }

    /** A reading as the cook took it, corrected as it was then. */
    Reading reading(CookInput.Heard heard, long atNanos) {
        return reading(heard, atNanos, corrections);
    }

    /** The same with these corrections of thermometers, by their names. */
    static Reading reading(CookInput.Heard heard, long atNanos, Map<String, Correction> corrections) {
        Reading raw = heard.shownC().isPresent()
                ? Reading.good(heard.probe(), atNanos, heard.shownC().getAsDouble(), "")
                : Reading.bad(heard.probe(), atNanos, "", heard.quality());
        return Thermometer.corrected(raw, Optional.ofNullable(corrections.get(heard.probe())));
    }

    /** Why the cook was not written down, as a word of it says; empty if it was. */
    static Optional<Unrecorded> unrecorded(ObjectNode detail) {
        return detail.has("why")
                ? Optional.of(new Unrecorded(CookJson.text(detail, "why"), CookJson.text(detail, "act")))
                : Optional.empty();
    }

    /** A word that this program does not know, of a newer one perhaps. */
    void unknown(String kind) {
        if (unknown.add(kind)) {
            LOG.warn("the record holds \"{}\", which this Spoonfall does not know; it was passed over", kind);
        }
    }
}
