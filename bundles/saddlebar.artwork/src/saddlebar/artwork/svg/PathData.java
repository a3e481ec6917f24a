package saddlebar.artwork.svg;

import java.awt.geom.Path2D;
import java.util.Optional;

/**
 * Path data and point lists of SVG as paths, in double precision.
 *
 * <p>Sources: SVG 1.1, second edition (2011), 8.3 with its grammar 8.3.9, and appendix F.6 for arcs. After an error what came before it is
 * drawn (appendix F.2).
 */
final class PathData {
    /** What was read: the path up to the fault, and the fault. */
    record Read(Path2D.Double path, Optional<Fault> fault) {
    }

    /**
     * @param character where it stands, from 1
     * @param what      what was wrong there
     * @param broken    a number that is none, such as NaN: nothing can be made of the element
     */
    record Fault(int character, String what, boolean broken) {
    }

    private final Scanner in;
    private final Path2D.Double path;
    private double x;
    private double y;
    private double startX;
    private double startY;
    /** Last control point, for the smooth commands; of which kind, says {@link #lastCurve}. */
    private double controlX;
    private double controlY;
    private char lastCurve = ' ';
    private boolean open;

    private PathData(String text, int windingRule) {
        this.in = new Scanner(text);
        this.path = new Path2D.Double(windingRule);
    }

    static Read parse(String text, int windingRule) {
        PathData data = new PathData(text, windingRule);
        Optional<Fault> fault = data.commands();
        return new Read(data.path, fault);
    }

    /** The points of a polyline or polygon. */
    static Read points(String text, boolean closed, int windingRule) {
        PathData data = new PathData(text, windingRule);
        Optional<Fault> fault = data.pairs(closed);
        return new Read(data.path, fault);
    }

    private Optional<Fault> pairs(boolean closed) {
        Optional<Fault> fault = Optional.empty();
        boolean first = true;
        try {
            in.space();
            while (!in.atEnd()) {
                double px = in.number();
                in.separator();
                double py = in.number();
                in.separator();
                if (first) {
                    path.moveTo(px, py);
                } else {
                    path.lineTo(px, py);
                }
                first = false;
            }
        } catch (NumberFormatException e) {
            fault = Optional.of(fault("a pair of numbers is expected"));
        }
        if (closed && !first) {
            path.closePath();
        }
        return fault;
    }

    private Optional<Fault> commands() {
        in.space();
        boolean first = true;
        while (!in.atEnd()) {
            char command = in.peek();
            if ("MmZzLlHhVvCcSsQqTtAa".indexOf(command) < 0 || first && command != 'M' && command != 'm') {
                return Optional.of(fault(first ? "a path starts with M" : "\"" + command + "\" is no path command"));
            }
            in.next();
            in.space();
            if (command == 'Z' || command == 'z') {
                close();
            } else {
                try {
                    segments(command);
                } catch (NumberFormatException e) {
                    return Optional.of(fault("a number is expected"));
                }
            }
            first = false;
            in.space();
        }
        return Optional.empty();
    }

    private Fault fault(String what) {
        int at = in.position();
        boolean broken = false;
        if (!in.atEnd()) {
            StringBuilder word = new StringBuilder();
            while (!in.atEnd() && word.length() < 9 && (Character.isLetter(in.peek()) || in.peek() == '-' || in.peek() == '+')) {
                word.append(in.next());
            }
            String plain = word.toString().replaceFirst("^[-+]", "");
            broken = plain.startsWith("NaN") || plain.startsWith("nan") || plain.startsWith("Infinity") || plain.startsWith("inf");
            in.back(at);
        }
        return new Fault(at + 1, what, broken);
    }

    private void close() {
        if (open) {
            path.closePath();
        }
        x = startX;
        y = startY;
        open = false;
        lastCurve = ' ';
    }

    /** One command letter and as many groups of numbers as follow it. */
    private void segments(char letter) {
        char command = letter;
        do {
            segment(command);
            in.space();
            if (!in.atEnd() && in.peek() == ',') {
                in.separator();
                if (!in.atNumber()) {
                    throw new NumberFormatException("a comma stands before no number");
                }
            }
            if (command == 'M') {
                command = 'L'; // further pairs after a move are lines
            } else if (command == 'm') {
                command = 'l';
            }
        } while (in.atNumber());
    }

    private void segment(char command) {
        boolean relative = Character.isLowerCase(command);
        double baseX = relative ? x : 0;
        double baseY = relative ? y : 0;
        switch (Character.toUpperCase(command)) {
            case 'M' -> {
                double[] n = numbers(2);
                x = baseX + n[0];
                y = baseY + n[1];
                startX = x;
                startY = y;
                path.moveTo(x, y);
                open = true;
                lastCurve = ' ';
            }
            case 'L' -> {
                double[] n = numbers(2);
                line(baseX + n[0], baseY + n[1]);
            }
            case 'H' -> line(baseX + numbers(1)[0], y);
            case 'V' -> line(x, baseY + numbers(1)[0]);
            case 'C' -> {
                double[] n = numbers(6);
                cubic(baseX + n[0], baseY + n[1], baseX + n[2], baseY + n[3], baseX + n[4], baseY + n[5]);
            }
            case 'S' -> {
                double[] n = numbers(4);
                cubic(mirroredX('C'), mirroredY('C'), baseX + n[0], baseY + n[1], baseX + n[2], baseY + n[3]);
            }
            case 'Q' -> {
                double[] n = numbers(4);
                quadratic(baseX + n[0], baseY + n[1], baseX + n[2], baseY + n[3]);
            }
            case 'T' -> {
                double[] n = numbers(2);
                quadratic(mirroredX('Q'), mirroredY('Q'), baseX + n[0], baseY + n[1]);
            }
            default -> arc(baseX, baseY);
        }
    }

    private double[] numbers(int count) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            if (i > 0) {
                in.separator();
            }
            values[i] = in.number();
        }
        return values;
    }

    private double mirroredX(char curve) {
        return lastCurve == curve ? 2 * x - controlX : x;
    }

    private double mirroredY(char curve) {
        return lastCurve == curve ? 2 * y - controlY : y;
    }

    /** After a closed part the next one starts where that one did. */
    private void begin() {
        if (!open) {
            path.moveTo(x, y);
            open = true;
        }
    }

    private void line(double toX, double toY) {
        begin();
        path.lineTo(toX, toY);
        x = toX;
        y = toY;
        lastCurve = ' ';
    }

    private void cubic(double x1, double y1, double x2, double y2, double toX, double toY) {
        begin();
        path.curveTo(x1, y1, x2, y2, toX, toY);
        controlX = x2;
        controlY = y2;
        lastCurve = 'C';
        x = toX;
        y = toY;
    }

    private void quadratic(double x1, double y1, double toX, double toY) {
        begin();
        path.quadTo(x1, y1, toX, toY);
        controlX = x1;
        controlY = y1;
        lastCurve = 'Q';
        x = toX;
        y = toY;
    }

    /**
     * An elliptical arc (F.6.5): with x1', y1' half the way between the ends, turned back by the rotation, and
     * lambda = x1'^2/rx^2 + y1'^2/ry^2, radii with lambda over 1 are enlarged by sqrt(lambda) (F.6.6). Drawn as cubics of at most a quarter
     * turn, k = 4/3 tan(turn/4): at most 2.73e-4 of the radius outside, never inside.
     */
    private void arc(double baseX, double baseY) {
        double rx = Math.abs(in.number());
        in.separator();
        double ry = Math.abs(in.number());
        in.separator();
        double rotation = Math.toRadians(in.number() % 360);
        in.separator();
        boolean large = in.flag();
        in.separator();
        boolean sweep = in.flag();
        in.separator();
        double toX = baseX + in.number();
        in.separator();
        double toY = baseY + in.number();
        if (toX == x && toY == y) {
            lastCurve = ' ';
            return; // F.6.2: left out
        }
        if (rx == 0 || ry == 0) {
            line(toX, toY);
            return;
        }
        begin();
        double cos = Math.cos(rotation);
        double sin = Math.sin(rotation);
        double halfX = (x - toX) / 2;
        double halfY = (y - toY) / 2;
        double ux = cos * halfX + sin * halfY;
        double uy = -sin * halfX + cos * halfY;
        double lambda = ux * ux / (rx * rx) + uy * uy / (ry * ry);
        double stretch = lambda > 1 ? Math.sqrt(lambda) : 1;
        double a = rx * stretch;
        double b = ry * stretch;
        double over = Math.max(0, 1 / Math.max(lambda, 1e-300) - 1); // (rx^2 ry^2 - …) / (…) of F.6.5.2
        double factor = (large == sweep ? -1 : 1) * (lambda >= 1 ? 0 : Math.sqrt(over));
        double vx = factor * a * uy / b;
        double vy = -factor * b * ux / a;
        double centreX = cos * vx - sin * vy + (x + toX) / 2;
        double centreY = sin * vx + cos * vy + (y + toY) / 2;
        double start = Math.atan2((uy - vy) / b, (ux - vx) / a);
        double turn = Math.atan2((-uy - vy) / b, (-ux - vx) / a) - start;
        if (sweep && turn < 0) {
            turn += 2 * Math.PI;
        } else if (!sweep && turn > 0) {
            turn -= 2 * Math.PI;
        }
        int pieces = (int) Math.max(1, Math.ceil(Math.abs(turn) / (Math.PI / 2) - 1e-9));
        double step = turn / pieces;
        double k = 4.0 / 3 * Math.tan(step / 4);
        for (int i = 0; i < pieces; i++) {
            double t0 = start + i * step;
            double t1 = t0 + step;
            double c0 = Math.cos(t0);
            double s0 = Math.sin(t0);
            double c1 = Math.cos(t1);
            double s1 = Math.sin(t1);
            double p1x = a * (c0 - k * s0);
            double p1y = b * (s0 + k * c0);
            double p2x = a * (c1 + k * s1);
            double p2y = b * (s1 - k * c1);
            boolean last = i == pieces - 1;
            double endX = last ? toX : centreX + cos * a * c1 - sin * b * s1;
            double endY = last ? toY : centreY + sin * a * c1 + cos * b * s1;
            path.curveTo(centreX + cos * p1x - sin * p1y, centreY + sin * p1x + cos * p1y, centreX + cos * p2x - sin * p2y,
                    centreY + sin * p2x + cos * p2y, endX, endY);
        }
        x = toX;
        y = toY;
        lastCurve = ' ';
    }
}
