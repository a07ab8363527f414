package spoonfall.kitchen.pan;

import java.util.List;
import java.util.Optional;
import spoonfall.cook.CookAlarm;
import spoonfall.cook.CookStatus;
import spoonfall.cook.monitor.CookMonitor;
import spoonfall.kitchen.afternoon.AfternoonBook;
import spoonfall.kitchen.cook.Cook;
import spoonfall.kitchen.cook.PanCook;
import spoonfall.kitchen.cook.PanNews;
import spoonfall.kitchen.thermometer.ProbeState;
import spoonfall.kitchen.thermometer.Thermometer;
import spoonfall.kitchen.thermometer.ThermometerCheck;
import spoonfall.kitchen.thermometer.Thermometers;
import spoonfall.kitchen.told.PanView;
import spoonfall.kitchen.typed.HandView;
import spoonfall.kitchen.typed.TypedBook;
import spoonfall.words.Outlook;

/** What a page shows of a pan. What is said of it changes once a second, or when something happens. Used by the kitchen's thread alone. */
final class PanPicture {
    private final PanCook cook;
    private final PanNews news;
    private final Thermometers thermometers;
    private final ThermometerCheck check;
    private final AfternoonBook afternoon;
    private final TypedBook typed;
    private Outlook outlook;
    private double outlookT = Double.NEGATIVE_INFINITY;

    PanPicture(
            PanCook cook,
            PanNews news,
            Thermometers thermometers,
            ThermometerCheck check,
            AfternoonBook afternoon,
            TypedBook typed) {
        this.cook = cook;
        this.news = news;
        this.thermometers = thermometers;
        this.check = check;
        this.afternoon = afternoon;
        this.typed = typed;
        outlook = ProbeWords.waiting(thermometers.state(thermometers.first()));
    }

    /** What is said is thought over again. */
    void sayAnew() {
        outlookT = Double.NEGATIVE_INFINITY;
        news.stir();
    }

    /** The newest view, if there is anything new to see; it goes into the picture of the climb. */
    Optional<PanView> take() {
        if (!news.hasView()) {
            return Optional.empty();
        }
        PanView view = view();
        cook.now()
                .ifPresent(begun -> view.status()
                        .ifPresent(status ->
                                begun.draw(status, thermometers.first().byHand())));
        news.viewTaken();
        return Optional.of(view);
    }

    /** How the pan is, and what is said about it. */
    PanView view() {
        ProbeState probe = thermometers.state(thermometers.first());
        if (cook.now().isEmpty()) {
            return view(Optional.empty(), waiting(probe), List.of(), List.of());
        }
        Cook current = cook.now().get();
        CookMonitor monitor = current.monitor();
        boolean gone = thermometers.first().isGone();
        CookStatus status = gone ? monitor.status().stale() : monitor.status();
        List<CookAlarm> alarms = monitor.alarms();
        if (Math.floor(status.t()) > outlookT || news.isFresh() || gone) {
            outlookT = Math.floor(status.t());
            outlook = current.story().tell(status, cook.foretold(), alarms, monitor.tests(), afternoon.toPrepare());
        }
        Outlook now = outlook.with(afternoon.comingUp(current.originNanos()));
        return view(Optional.of(status), gone ? ProbeWords.gone(probe, now) : now, alarms, others(monitor));
    }

    private Outlook waiting(ProbeState probe) {
        if (check.firstInIce()) {
            return ProbeWords.inIce();
        }
        return thermometers.first().byHand() ? ProbeWords.waitingForTyped() : ProbeWords.waiting(probe);
    }

    private PanView view(
            Optional<CookStatus> status, Outlook shown, List<CookAlarm> alarms, List<PanView.Other> others) {
        return new PanView(
                cook.now().map(Cook::startedAt),
                news.seq(),
                status,
                shown,
                alarms,
                news.heardNanos(),
                thermometers.basis(),
                others,
                hand(status),
                check.view(),
                cook.now().map(begun -> begun.monitor().tests()));
    }

    private Optional<HandView> hand(Optional<CookStatus> status) {
        Thermometer first = thermometers.first();
        return first.byHand() ? Optional.of(HandView.of(first.name(), typed.last(), status)) : Optional.empty();
    }

    private List<PanView.Other> others(CookMonitor monitor) {
        return thermometers.others().stream()
                .map(one -> new PanView.Other(
                        one.name(), monitor.otherTemperatureC(one.name()), monitor.otherQuality(one.name())))
                .toList();
    }
}
