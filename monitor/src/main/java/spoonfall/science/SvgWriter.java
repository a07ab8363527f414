package spoonfall.science;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a picture as well-formed SVG, one element a line. */
final class SvgWriter {
    private static final String SVG = "http://www.w3.org/2000/svg";

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter xml;

    /** Begins a picture with what a screen reader says of it and its style. */
    SvgWriter(int width, int height, String title, String description, String style) {
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            xml.writeStartElement("svg");
            xml.writeDefaultNamespace(SVG);
            xml.writeAttribute("viewBox", "0 0 " + width + " " + height);
            xml.writeAttribute("width", String.valueOf(width));
            xml.writeAttribute("height", String.valueOf(height));
            xml.writeAttribute("role", "img");
            xml.writeCharacters("\n");
        } catch (XMLStreamException e) {
            throw broken(e);
        }
        element("title", title);
        element("desc", description);
        element("style", style);
    }

    /** An element without content; attributes as names and values in turn. */
    void leaf(String name, String... attributes) {
        try {
            xml.writeEmptyElement(name);
            writeAttributes(attributes);
            xml.writeCharacters("\n");
        } catch (XMLStreamException e) {
            throw broken(e);
        }
    }

    /** A straight line. */
    void line(String style, double fromX, double fromY, double toX, double toY) {
        leaf(
                "line",
                "class",
                style,
                "x1",
                Row.fixed(fromX, 1),
                "y1",
                Row.fixed(fromY, 1),
                "x2",
                Row.fixed(toX, 1),
                "y2",
                Row.fixed(toY, 1));
    }

    /** Words whose start, middle or end lies at a place. */
    void text(double x, double y, String anchor, String words) {
        element("text", words, "x", Row.fixed(x, 1), "y", Row.fixed(y, 1), "text-anchor", anchor);
    }

    /** Ends the picture and returns it. */
    String end() {
        try {
            xml.writeEndElement();
            xml.writeCharacters("\n");
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw broken(e);
        }
        return text.toString();
    }

    private void element(String name, String content, String... attributes) {
        try {
            xml.writeStartElement(name);
            writeAttributes(attributes);
            xml.writeCharacters(content);
            xml.writeEndElement();
            xml.writeCharacters("\n");
        } catch (XMLStreamException e) {
            throw broken(e);
        }
    }

    private void writeAttributes(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            xml.writeAttribute(attributes[i], attributes[i + 1]);
        }
    }

    private static IllegalStateException broken(XMLStreamException e) {
        return new IllegalStateException("the picture could not be written", e);
    }
}
