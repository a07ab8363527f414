package spoonfall.science;

import java.util.ArrayList;
import java.util.List;

/** Every published value the project checks its physics against, beside ours, and the tables and plot made of them. */
public final class Figures {
    private Figures() {}

    /** Every source. */
    public static List<Group> all() {
        List<Group> all = new ArrayList<>(SyrupFigures.published());
        all.addAll(SyrupFigures.others());
        all.addAll(WaterFigures.groups());
        return all;
    }

    /** The sources of rises that the curve's doubt is judged by. */
    public static List<Group> rises() {
        return SyrupFigures.published();
    }

    /** The tables, as Markdown: the worst difference of each source, then every row. */
    public static String tables() {
        return FigureTables.markdown(all());
    }

    /** The syrup curve with its doubt and the published points, as SVG. */
    public static String syrupPlot() {
        return new SyrupPlot().svg(rises());
    }
}
