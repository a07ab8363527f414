package spoonfall.log;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** Keeps nothing. */
final class NoDiary implements Diary {
    @Override
    public Recalled<Left> left() {
        return Recalled.nothing();
    }

    @Override
    public void began(ObjectNode header) {
        // nothing is kept
    }

    @Override
    public void resumed(Left left) {
        // nothing is kept
    }

    @Override
    public void line(Line line) {
        // nothing is kept
    }

    @Override
    public void alive(long atMillis) {
        // nothing is kept
    }

    @Override
    public boolean settle() {
        return true;
    }
}
