package spoonfall.canner;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;

/**
 * Watches jars from the canner to their seals. It takes its time from what it is told, in seconds on the caller's
 * monotonic scale, and everything that happens comes back as events. A tap that arrives twice, by its id, does nothing
 * the second time. No way leads to an early end: whatever is in doubt makes the time longer.
 *
 * <p>Not safe for use by several threads.
 */
public final class CannerWatch {
    /** How long the jars stay in the canner after heat and lid are off, in seconds (NCHFP). */
    public static final double REST_S = 300;

    private static final int MOST_UNDO = 20;
    private static final int MOST_TAPS = 200;

    private final CannerAlarms alarms = new CannerAlarms();
    private final Set<String> taps = new LinkedHashSet<>();
    private final Deque<Before> undo = new ArrayDeque<>();
    private BoilSense sense = new BoilSense();
    private CannerStanding standing = CannerStanding.NOTHING;
    private CannerProbe.State toldProbe = CannerProbe.State.NONE;
    private long marks;
    private int loads;
    private double now;

    /** How it stood before a tap. */
    private record Before(long mark, CannerStanding standing) {}

    /** A watch over nothing yet. */
    public CannerWatch() {}

    /**
     * A watch that goes on where another one was left. What boiled while nobody watched is in doubt, and asked at its end; what
     * rests or cools goes on by the clock.
     *
     * @param left how it stood then
     * @param awayS for how many seconds nobody has watched since; not negative
     */
    public CannerWatch(CannerMemory left, double awayS) {
        standing = new CannerStanding(left.batch(), left.shelf()).afterAway(awayS);
        alarms.recall(left.called());
        taps.addAll(left.taps());
        loads = left.loads();
        marks = left.marks();
        now = left.t();
    }

    /** Nobody watched for so many seconds: what boiled then is in doubt. */
    public List<CannerEvent> away(double awayS) {
        CannerStanding after = standing.afterAway(awayS);
        if (after.equals(standing)) {
            return List.of();
        }
        standing = after;
        return List.of(new CannerEvent.Noted(now));
    }

    /** How it stands, for another one to go on with. */
    public CannerMemory memory() {
        return new CannerMemory(
                now, standing.batch(), standing.shelf(), loads, marks, List.copyOf(taps), alarms.memory());
    }

    /** The thermometer in the canner was read. */
    public List<CannerEvent> accept(double t, double temperatureC) {
        List<CannerEvent> events = advanceTo(t);
        standing.batch().ifPresent(batch -> {
            sense.accept(now, temperatureC, batch.load().waterBoilC());
            step(events);
        });
        return events;
    }

    /** Time passes. An instant before the latest one counts as that. */
    public List<CannerEvent> advanceTo(double t) {
        now = Math.max(now, t);
        List<CannerEvent> events = new ArrayList<>();
        step(events);
        return events;
    }

    /**
     * Jars go into the canner.
     *
     * @param id names the tap
     * @throws NotNow if others are in it
     */
    public List<CannerEvent> load(double t, String id, JarLoad load) {
        return tapped(t, id, () -> {
            if (standing.batch().isPresent()) {
                throw new NotNow("there are jars in the canner; say that they are out first, or clear them");
            }
            sense = new BoilSense();
            return standing.with(CannerBatch.loaded(load, now));
        });
    }

    /**
     * Somebody says something by one tap.
     *
     * @param id names the tap
     * @throws NotNow if that cannot be so now
     */
    public List<CannerEvent> tap(double t, String id, CannerTap tap) {
        return tapped(t, id, () -> {
            if (tap == CannerTap.CLEAR) {
                return new CannerStanding(Optional.empty(), standing.shelf());
            }
            CannerBatch batch =
                    standing.batch().orElseThrow(() -> new NotNow("no jars are in the canner; say first what goes in"));
            if (tap == CannerTap.LIFTED && batch.phase() == CannerPhase.LIFT_OUT) {
                CannerStanding lifted = standing.lifted(loads + 1, now);
                loads++;
                return lifted;
            }
            CannerBatch next = CannerTaps.after(batch, tap, now, sense);
            if (tap == CannerTap.BOIL_LOST) {
                sense.forget();
            }
            return standing.with(next);
        });
    }

    /**
     * Somebody looked at a lid.
     *
     * @param id names the tap
     * @param number the load
     * @param jar which jar of it, counted from 1
     * @throws NotNow if they still cool, or if there is no such jar
     */
    public List<CannerEvent> seal(double t, String id, int number, int jar, Seal seal) {
        return tapped(t, id, () -> {
            ShelfLoad load = shelved(number);
            if (load.phase(now) == ShelfLoad.Phase.COOLING) {
                throw new NotNow("leave the jars alone for " + CannerWords.hours(load.checkT() - now)
                        + " more: a lid shows whether it sealed only after 12 hours");
            }
            if (jar < 1 || jar > load.seals().size()) {
                throw new NotNow(
                        "load " + number + " has jars 1 to " + load.seals().size() + ", and no jar " + jar);
            }
            return standing.with(standing.shelf().stream()
                    .map(one -> one.number() == number ? one.with(jar, seal) : one)
                    .toList());
        });
    }

    /** Somebody put a load away. */
    public List<CannerEvent> putAway(double t, String id, int number) {
        return tapped(t, id, () -> {
            ShelfLoad load = shelved(number);
            return standing.with(standing.shelf().stream()
                    .filter(one -> one.number() != load.number())
                    .toList());
        });
    }

    private ShelfLoad shelved(int number) {
        return standing.shelf().stream()
                .filter(load -> load.number() == number)
                .findFirst()
                .orElseThrow(() -> new NotNow("no load " + number + " is cooling"));
    }

    /**
     * Takes the tap of that mark back; nothing happens if another one can be taken back now. A time that runs again is
     * in doubt where a thermometer watches, so that somebody has to say at its end that it boiled.
     */
    public List<CannerEvent> undo(double t, long mark) {
        List<CannerEvent> events = advanceTo(t);
        Before before = undo.peekLast();
        if (before != null && before.mark() == mark) {
            undo.removeLast();
            CannerPhase was = standing.phase();
            standing = before.standing();
            standing.batch()
                    .filter(batch -> batch.phase() == CannerPhase.PROCESSING && was != CannerPhase.PROCESSING)
                    .filter(batch -> sense.everHeard() && !batch.byTaps())
                    .ifPresent(batch ->
                            standing = standing.with(batch.with(batch.run().afterSilence())));
            told(was, events);
            step(events);
        }
        return events;
    }

    /** Somebody knows of an alarm; empty if there never was one of that id. */
    public Optional<CannerAlarm> acknowledge(double t, String id, List<CannerEvent> events) {
        events.addAll(advanceTo(t));
        return alarms.acknowledge(now, id, events);
    }

    /** How everything stands. */
    public CannerView view() {
        CannerProbe probe = probe();
        Optional<CannerBatch> batch = standing.batch();
        OptionalDouble dueT = batch.map(CannerWords::dueT).orElse(OptionalDouble.empty());
        return new CannerView(
                now,
                standing.phase(),
                batch.map(CannerBatch::load),
                dueT.isPresent() ? OptionalDouble.of(Math.max(0, dueT.getAsDouble() - now)) : OptionalDouble.empty(),
                dueT,
                batch.map(one -> one.run().restarts()).orElse(0),
                probe,
                batch.map(one -> CannerWords.say(one, probe)).orElseGet(() -> ShelfWords.say(standing.shelf(), now)),
                batch.map(one -> CannerOffers.of(one, probe)).orElse(List.of()),
                standing.shelf().stream()
                        .map(load -> new CannerView.OnShelf(load, load.phase(now), ShelfWords.text(load, now)))
                        .toList(),
                undo.isEmpty()
                        ? OptionalLong.empty()
                        : OptionalLong.of(undo.getLast().mark()),
                alarms.standing());
    }

    private CannerProbe probe() {
        boolean byTaps = standing.batch().map(CannerBatch::byTaps).orElse(false);
        return CannerProbe.of(sense, byTaps, now);
    }

    private interface Change {
        CannerStanding made();
    }

    private List<CannerEvent> tapped(double t, String id, Change change) {
        List<CannerEvent> events = advanceTo(t);
        if (taps.contains(id)) {
            return events;
        }
        CannerStanding before = standing;
        CannerStanding after = change.made();
        taps.add(id);
        if (taps.size() > MOST_TAPS) {
            taps.remove(taps.iterator().next());
        }
        if (!after.equals(before)) {
            standing = after;
            marks++;
            undo.addLast(new Before(marks, before));
            if (undo.size() > MOST_UNDO) {
                undo.removeFirst();
            }
            told(before.phase(), events);
            step(events);
        }
        return events;
    }

    private void told(CannerPhase was, List<CannerEvent> events) {
        CannerPhase is = standing.phase();
        events.add(was == is ? new CannerEvent.Noted(now) : new CannerEvent.PhaseEntered(now, is));
        alarms.known(now, events); // whoever taps stands at the canner
        updateAlarms(events);
        alarms.known(now, events);
    }

    private void step(List<CannerEvent> events) {
        for (Optional<CannerBatch> next = next(); next.isPresent(); next = next()) {
            CannerPhase was = standing.phase();
            standing = standing.with(next.get());
            if (standing.phase() != was) {
                events.add(new CannerEvent.PhaseEntered(now, standing.phase()));
            }
            boolean seen = standing.phase() == CannerPhase.BOIL_LOST || standing.phase() == CannerPhase.PROCESSING;
            if (seen && standing.phase() != was) {
                undo.clear(); // what the thermometer saw cannot be taken back
            }
            updateAlarms(events);
        }
        CannerProbe.State probe = probe().state();
        if (probe != toldProbe) {
            toldProbe = probe;
            events.add(new CannerEvent.Noted(now));
        }
    }

    private Optional<CannerBatch> next() {
        return standing.batch().flatMap(batch -> CannerSteps.next(batch, now, sense));
    }

    private void updateAlarms(List<CannerEvent> events) {
        for (CannerAlarmName name : CannerAlarmName.values()) {
            boolean present = standing.batch().filter(name::isSo).isPresent();
            Say text =
                    standing.batch().map(batch -> CannerWords.call(name, batch)).orElse(Say.NOTHING);
            alarms.update(now, name, present, text, events);
        }
    }
}
