package spoonfall.log;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import spoonfall.cook.Unrecorded;

/** Keeps nothing. */
final class NoJournal implements CookJournal {
    @Override
    public String pan() {
        return "";
    }

    @Override
    public Recalled<UnfinishedCook> unfinished() {
        return Recalled.nothing();
    }

    @Override
    public Recalled<Integer> lastNumber() {
        return Recalled.of(Optional.of(0));
    }

    @Override
    public void began(CookHeader header) {
        // nothing is kept
    }

    @Override
    public void resumed(UnfinishedCook cook) {
        // nothing is kept
    }

    @Override
    public void input(CookInput input) {
        // nothing is kept
    }

    @Override
    public void event(long atMillis, String kind, ObjectNode detail) {
        // nothing is kept
    }

    @Override
    public void note(CookNote note) {
        // nothing is kept
    }

    @Override
    public void alive(long atMillis) {
        // nothing is kept
    }

    @Override
    public void ended(long atMillis) {
        // nothing is kept
    }

    @Override
    public boolean settle() {
        return true;
    }

    @Override
    public Optional<Unrecorded> trouble() {
        return Optional.empty();
    }
}
