package spoonfall.lesson;

import java.util.List;

/**
 * A cook to go through again at one's own pace.
 *
 * @param frames what was seen and said, in order, at most {@link LessonMaker#MOST_FRAMES}
 * @param moments what is worth stopping at, in order, at most {@link LessonMaker#MOST_MOMENTS}
 * @param lastT seconds of the cook at which the lesson ends
 * @param cut whether the cook went on after that, or had more moments
 */
public record Lesson(List<Frame> frames, List<Moment> moments, double lastT, boolean cut) {
    /** Keeps copies of the lists. */
    public Lesson {
        frames = List.copyOf(frames);
        moments = List.copyOf(moments);
    }
}
