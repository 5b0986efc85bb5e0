package croftboard.paper.file;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.File;
import java.io.IOException;
import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Draws the little of SVG that sheets use: {@code rect}, {@code line}, {@code text}, and {@code g} with a translate, in
 * black. A whole library for it would be four times the rest of the printer.
 */
final class PictureDrawer implements SVGDrawer {
    private static final double PER_INCH = 96;
    private final Outlines face;

    PictureDrawer(Outlines face) {
        this.face = face;
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> rules, SharedContext shared) { }

    @Override
    public void addFontFile(File file, String family, Integer weight, BaseRendererBuilder.FontStyle style)
            throws IOException, FontFormatException { }

    @Override
    public void close() { }

    @Override
    public SVGImage buildSVGImage(Element svg, Box box, CssContext css, double width, double height, double dots) {
        double[] view = view(svg);
        double wide = length(svg.getAttribute("width"), view[2]) * dots;
        double high = length(svg.getAttribute("height"), view[3]) * dots;
        return new Drawn(svg, view, wide, high, dots, face);
    }

    /** In CSS pixels, of which 96 are an inch. */
    private static double length(String text, double otherwise) {
        if (text.isEmpty()) {
            return otherwise;
        }
        double number = Double.parseDouble(text.replaceAll("[a-z%]", ""));
        String unit = text.replaceAll("[0-9.]", "");
        return switch (unit) {
            case "mm" -> number * PER_INCH / 25.4;
            case "in" -> number * PER_INCH;
            case "pt" -> number * PER_INCH / 72;
            default -> number;
        };
    }

    private static double[] view(Element svg) {
        if (svg.getAttribute("viewBox").isEmpty()) {
            return new double[] {0, 0, length(svg.getAttribute("width"), 100), length(svg.getAttribute("height"), 100)};
        }
        String[] parts = svg.getAttribute("viewBox").trim().split("[ ,]+");
        double[] view = new double[4];
        for (int i = 0; i < 4; i++) {
            view[i] = Double.parseDouble(parts[i]);
        }
        return view;
    }

    /** @param wide with {@code high} in the device's dots. @param dots a pixel; what is drawn on is measured in pixels */
    private record Drawn(Element svg, double[] view, double wide, double high, double dots, Outlines face) implements SVGImage {
        @Override
        public int getIntrinsicWidth() {
            return (int) Math.round(wide);
        }

        @Override
        public int getIntrinsicHeight() {
            return (int) Math.round(high);
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            double across = wide / dots;
            double down = high / dots;
            device.drawWithGraphics((float) x, (float) y, (float) across, (float) down, g -> {
                g.scale(across / view[2], down / view[3]);
                g.translate(-view[0], -view[1]);
                g.setPaint(java.awt.Color.BLACK);
                children(g, svg);
            });
        }

        private void children(Graphics2D g, Element parent) {
            for (Node n = parent.getFirstChild(); n != null; n = n.getNextSibling()) {
                if (n instanceof Element e) {
                    draw(g, e);
                }
            }
        }

        private void draw(Graphics2D g, Element e) {
            switch (e.getLocalName() == null ? e.getNodeName() : e.getLocalName()) {
                case "rect" -> rect(g, e);
                case "line" -> {
                    g.setStroke(new java.awt.BasicStroke((float) number(e, "stroke-width", 1)));
                    g.draw(new Line2D.Double(number(e, "x1", 0), number(e, "y1", 0), number(e, "x2", 0), number(e, "y2", 0)));
                }
                case "text" -> text(g, e);
                case "g" -> group(g, e);
                default -> { }
            }
        }

        private static void rect(Graphics2D g, Element e) {
            var shape = new Rectangle2D.Double(number(e, "x", 0), number(e, "y", 0), number(e, "width", 0), number(e, "height", 0));
            if (e.getAttribute("fill").equals("none")) {
                g.setStroke(new java.awt.BasicStroke((float) number(e, "stroke-width", 1)));
                g.draw(shape);
            } else if (!e.getAttribute("fill").matches("white|#fff(fff)?|(?i)#FFFFFF")) {
                g.fill(shape);
            }
        }

        private void text(Graphics2D g, Element e) {
            double size = number(e, "font-size", 10) / face.perEm();
            double x = number(e, "x", 0) - switch (e.getAttribute("text-anchor")) {
                case "middle" -> face.width(e.getTextContent()) * size / 2;
                case "end" -> face.width(e.getTextContent()) * size;
                default -> 0;
            };
            AffineTransform before = g.getTransform();
            g.translate(x, number(e, "y", 0));
            g.scale(size, -size);
            face.shapes(e.getTextContent()).forEach(g::fill);
            g.setTransform(before);
        }

        private void group(Graphics2D g, Element e) {
            AffineTransform before = g.getTransform();
            var m = java.util.regex.Pattern.compile("translate\\(([-0-9.]+)[ ,]+([-0-9.]+)\\)").matcher(e.getAttribute("transform"));
            if (m.find()) {
                g.translate(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2)));
            }
            children(g, e);
            g.setTransform(before);
        }

        private static double number(Element e, String name, double otherwise) {
            String text = e.getAttribute(name);
            return text.isEmpty() ? otherwise : Double.parseDouble(text.replaceAll("[a-z]+$", ""));
        }
    }
}
