package spoonfall.paper;

/** HTML or SVG in the making: what comes from elsewhere goes in as text only. */
final class Markup {
    private final StringBuilder all = new StringBuilder();

    /** Markup of our own. */
    Markup raw(String markup) {
        all.append(markup);
        return this;
    }

    /** Text, or the value of an attribute between double quotes. */
    Markup text(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> all.append("&amp;");
                case '<' -> all.append("&lt;");
                case '>' -> all.append("&gt;");
                case '"' -> all.append("&quot;");
                case '\'' -> all.append("&#39;");
                default -> all.append(c);
            }
        }
        return this;
    }

    @Override
    public String toString() {
        return all.toString();
    }
}
