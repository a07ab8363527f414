package spoonfall.kitchen.afternoon;

import java.util.Optional;
import java.util.function.Supplier;
import spoonfall.cook.calm.CalmForecast;
import spoonfall.kitchen.told.AfternoonView;

/** Whether a page would be wrong without how an afternoon stands now. It is asked with every reading, and to compare all costs more. */
final class AfternoonNews {
    private boolean moved;
    private Optional<CalmForecast.Shown> foretold = Optional.empty();
    private AfternoonView told;

    /** Pages know that view. */
    AfternoonNews(AfternoonView told) {
        this.told = told;
    }

    /** Something happened of which it may be wrong not to tell. */
    void moved() {
        moved = true;
    }

    /**
     * How it stands, if that is news.
     *
     * @param now what is foretold of the pan
     * @param view how it stands; looked at only where something happened or is foretold otherwise
     */
    Optional<AfternoonView> take(Optional<CalmForecast.Shown> now, Supplier<AfternoonView> view) {
        if (!moved && now.equals(foretold)) {
            return Optional.empty();
        }
        moved = false;
        foretold = now;
        AfternoonView stands = view.get();
        if (!stands.isNewsAfter(told)) {
            return Optional.empty();
        }
        told = stands;
        return Optional.of(stands);
    }
}
