package spoonfall.announce;

import spoonfall.alarm.Priority;

/**
 * Something to be said aloud.
 *
 * @param topic what it is about; a newer announcement of a topic takes the place of one that still waits
 * @param priority how soon it must be heard
 * @param text one or two sentences, ready to be spoken
 */
record Announcement(String topic, Priority priority, String text) {
    private static final int LONGEST = 300;

    /** Takes out what no voice can say: line ends and other controls; what is too long is cut. */
    Announcement {
        text = text.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
        text = text.substring(0, Math.min(LONGEST, text.length()));
    }
}
