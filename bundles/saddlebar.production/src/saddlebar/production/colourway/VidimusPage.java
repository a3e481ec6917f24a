package saddlebar.production.colourway;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import saddlebar.model.commission.Approval;
import saddlebar.production.light.BareColour;
import saddlebar.production.light.LightBehind;
import saddlebar.production.light.RectMm;

/**
 * Lays a window's picture over its captions. Everything is measured by the picture's own size, so that a large picture has large words.
 *
 * @param colourway empty: the window has none
 * @param approval  if the client has agreed
 * @param keys      its glasses
 */
record VidimusPage(VidimusWords words, String title, String window, Optional<String> colourway, Optional<Approval> approval, LightBehind light,
        RectMm bounds, List<Key> keys) {
    /** A glass of the window: its colour in this light and how many pieces are of it. */
    record Key(String name, BareColour colour, int pieces) {
    }

    private static final Color INK = new Color(0x202326);
    private static final Color QUIET = new Color(0x5A6066);
    private static final double TEXT_SHARE = 1 / 55.0;
    private static final int LEAST_TEXT_PX = 11;
    private static final int MOST_COLUMNS = 4;
    private static final double BAR_MM = 100;

    BufferedImage lay(BufferedImage glass) {
        int text = Math.max(LEAST_TEXT_PX, (int) Math.round(Math.max(glass.getWidth(), glass.getHeight()) * TEXT_SHARE));
        int margin = 2 * text;
        int width = Math.max(glass.getWidth(), 34 * text) + 2 * margin;
        int columns = Math.max(1, Math.min(MOST_COLUMNS, (width - 2 * margin) / (16 * text)));
        int line = (int) Math.round(1.6 * text);
        List<String> captions = captions();
        int rows = (keys.size() + columns - 1) / columns;
        int height = margin + glass.getHeight() + 2 * line + (captions.size() + 1) * line + line / 2 + rows * line + 2 * line + margin / 2;
        BufferedImage page = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = page.createGraphics();
        try {
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            pen.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            pen.setColor(Color.WHITE);
            pen.fillRect(0, 0, width, height);
            int left = (width - glass.getWidth()) / 2;
            pen.drawImage(glass, left, margin, null);
            int y = margin + glass.getHeight() + line;
            bar(pen, left, y, glass.getWidth() / bounds.widthMm(), text);
            y += line + line / 2;
            pen.setColor(INK);
            pen.setFont(new Font(Font.SANS_SERIF, Font.BOLD, (int) Math.round(1.2 * text)));
            pen.drawString(fitting(pen, window + (title.isEmpty() ? "" : ", " + title), width - 2 * margin), margin, y);
            pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, text));
            for (String caption : captions) {
                y += line;
                pen.drawString(fitting(pen, caption, width - 2 * margin), margin, y);
            }
            y += line + line / 2;
            int across = (width - 2 * margin) / columns;
            for (int i = 0; i < keys.size(); i++) {
                key(pen, keys.get(i), margin + i % columns * across, y + i / columns * line, across, text);
            }
            y += rows * line + line / 2;
            pen.setColor(QUIET);
            pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, (int) Math.round(0.85 * text)));
            pen.drawString(fitting(pen, notes(), width - 2 * margin), margin, y);
        } finally {
            pen.dispose();
        }
        return page;
    }

    private List<String> captions() {
        List<String> captions = new ArrayList<>();
        String size = put(words.size(), String.valueOf(Math.round(bounds.widthMm())), String.valueOf(Math.round(bounds.heightMm())));
        captions.add(size + ", " + words.light(light));
        colourway.ifPresent(name -> captions.add(put(words.colourway(), name) + ", "
                + approval.map(given -> put(words.approved(), String.valueOf(given.getOn()), given.getBy())).orElse(words.notApproved())));
        return captions;
    }

    private String notes() {
        int stronger = keys.stream().filter(key -> key.colour().outOfGamut()).mapToInt(Key::pieces).sum();
        String first = stronger == 0 ? "" : (stronger == 1 ? words.oneStronger() : put(words.stronger(), String.valueOf(stronger))) + " ";
        return first + words.caution();
    }

    private void key(Graphics2D pen, Key key, int x, int y, int room, int text) {
        int side = (int) Math.round(1.1 * text);
        pen.setColor(new Color(key.colour().rgb()));
        pen.fillRect(x, y - side + text / 6, side, side);
        pen.setColor(QUIET);
        pen.setStroke(new BasicStroke(Math.max(1, text / 14f)));
        pen.drawRect(x, y - side + text / 6, side, side);
        pen.setColor(INK);
        String count = key.pieces() == 1 ? words.onePiece() : put(words.pieces(), String.valueOf(key.pieces()));
        String name = key.name().isEmpty() ? words.unchosen() : key.name();
        pen.drawString(fitting(pen, name + (key.colour().outOfGamut() ? " +" : "") + ", " + count, room - 2 * text), x + side + text / 2, y);
    }

    /** 100 mm of the window, or a tenth or ten times that where it would be too long or too short. */
    private static void bar(Graphics2D pen, int left, int y, double pxPerMm, int text) {
        double mm = BAR_MM;
        while (mm * pxPerMm > 20.0 * text) {
            mm /= 10;
        }
        while (mm * pxPerMm < 2.0 * text) {
            mm *= 10;
        }
        int length = (int) Math.round(mm * pxPerMm);
        pen.setColor(QUIET);
        pen.setStroke(new BasicStroke(Math.max(1, text / 10f)));
        pen.drawLine(left, y, left + length, y);
        pen.drawLine(left, y - text / 4, left, y + text / 4);
        pen.drawLine(left + length, y - text / 4, left + length, y + text / 4);
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, (int) Math.round(0.85 * text)));
        pen.drawString(String.format(Locale.ROOT, "%.0f mm", mm), left + length + text / 2, y + text / 3);
    }

    /** As much of the words as has room, with an ellipsis where some are left out. */
    private static String fitting(Graphics2D pen, String words, int room) {
        FontMetrics metrics = pen.getFontMetrics();
        if (metrics.stringWidth(words) <= room) {
            return words;
        }
        int end = words.length();
        while (end > 1 && metrics.stringWidth(words.substring(0, end) + "…") > room) {
            end--;
        }
        return words.substring(0, end) + "…";
    }

    private static String put(String pattern, Object... values) {
        return MessageFormat.format(pattern.replace("'", "''"), values);
    }
}
