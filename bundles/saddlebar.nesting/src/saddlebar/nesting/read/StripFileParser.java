package saddlebar.nesting.read;

import java.io.EOFException;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.MalformedJsonException;

import saddlebar.model.problem.Refusal;
import saddlebar.nesting.NestItem;
import saddlebar.nesting.SheetArea;
import saddlebar.nesting.Turns;

/** Reads one strip; see {@link StripFile} for the form. */
final class StripFileParser {
    private static final int MOST_POINTS = 1_000_000;
    private final LineReader lines;
    private final JsonReader json;
    private final String fileName;
    private final Set<String> ids = new HashSet<>();

    StripFileParser(Reader text, String fileName) throws IOException {
        this.fileName = fileName;
        lines = new LineReader(text);
        json = new JsonReader(lines);
    }

    StripFile strip() throws IOException {
        try {
            return readStrip();
        } catch (MalformedJsonException | EOFException e) {
            throw new Refusal(where(), "it is no well-formed JSON", "close every bracket and quotation mark and write the file anew", e);
        } catch (IllegalStateException | NumberFormatException e) { // the parser's words for a value of another kind
            throw refuse(json.getPath() + " is of another kind than it must be",
                    "give numbers as numbers, lists in [ ] and items in { }", e);
        }
    }

    private StripFile readStrip() throws IOException {
        double heightMm = Double.NaN;
        List<NestItem> items = new ArrayList<>();
        json.beginObject();
        while (json.hasNext()) {
            switch (json.nextName()) {
                case "strip_height" -> heightMm = stripHeight();
                case "items" -> {
                    json.beginArray();
                    while (json.hasNext()) {
                        items.add(item());
                    }
                    json.endArray();
                }
                default -> json.skipValue();
            }
        }
        json.endObject();
        if (Double.isNaN(heightMm)) {
            throw new Refusal(fileName, "it has no strip_height", "give the height of the strip in mm");
        }
        if (items.isEmpty()) {
            throw new Refusal(fileName, "it lists no item", "give at least one in items");
        }
        return new StripFile(heightMm, items);
    }

    private double stripHeight() throws IOException {
        double mm = json.nextDouble();
        if (!(mm >= NestItem.SMALLEST_MM && mm <= SheetArea.LARGEST_MM)) {
            throw refuse("strip_height is " + mm, "give a height in mm above 0", null);
        }
        return mm;
    }

    private NestItem item() throws IOException {
        String id = null;
        int demand = 1;
        Turns turns = Turns.FREE;
        List<Coordinate> points = null;
        json.beginObject();
        while (json.hasNext()) {
            switch (json.nextName()) {
                case "id" -> id = json.nextString();
                case "demand" -> demand = demand();
                case "allowed_orientations" -> turns = turns();
                case "shape" -> points = shape();
                default -> json.skipValue();
            }
        }
        json.endObject();
        if (id == null) {
            throw refuse("an item has no id", "give each item an id of its own", null);
        }
        if (!ids.add(id)) {
            throw refuse("the id " + id + " is used twice", "give each item an id of its own", null);
        }
        if (points == null) {
            throw refuse("item " + id + " has no shape.data", "give its outline as a list of points", null);
        }
        return item(id, demand, turns, points);
    }

    private NestItem item(String id, int demand, Turns turns, List<Coordinate> points) {
        if (!points.get(0).equals2D(points.get(points.size() - 1))) {
            points.add(points.get(0).copy());
        }
        if (points.size() < 4) {
            throw refuse("item " + id + " has fewer than three corners", "give its outline as a list of points", null);
        }
        try {
            return NestItem.of(id, new GeometryFactory().createLinearRing(points.toArray(new Coordinate[0])), demand, turns);
        } catch (Refusal e) {
            throw refuse("item " + id + ": " + e.what(), e.remedy(), e);
        }
    }

    private int demand() throws IOException {
        double demand = json.nextDouble();
        if (!(demand >= 1 && demand <= NestItem.MOST && demand == Math.rint(demand))) {
            throw refuse("demand is " + demand, "give a whole number from 1 to " + NestItem.MOST, null);
        }
        return (int) demand;
    }

    private Turns turns() throws IOException {
        if (json.peek() == JsonToken.NULL) {
            json.nextNull();
            return Turns.FREE;
        }
        List<Double> degrees = new ArrayList<>();
        json.beginArray();
        while (json.hasNext()) {
            degrees.add(json.nextDouble());
        }
        json.endArray();
        if (degrees.isEmpty() || degrees.stream().anyMatch(d -> !Double.isFinite(d))) {
            throw refuse("allowed_orientations names no angle", "give angles in degrees, such as [0, 180], or leave it out for any", null);
        }
        return Turns.of(degrees);
    }

    private List<Coordinate> shape() throws IOException {
        List<Coordinate> points = null;
        String type = "simple_polygon";
        json.beginObject();
        while (json.hasNext()) {
            switch (json.nextName()) {
                case "type" -> type = json.nextString();
                case "data" -> points = json.peek() == JsonToken.BEGIN_ARRAY ? points() : skipped();
                default -> json.skipValue();
            }
        }
        json.endObject();
        if (!type.equals("simple_polygon")) {
            throw refuse("shape.type is " + type, "give each shape as a simple_polygon", null);
        }
        return points;
    }

    private List<Coordinate> skipped() throws IOException {
        json.skipValue();
        return null;
    }

    private List<Coordinate> points() throws IOException {
        List<Coordinate> points = new ArrayList<>();
        json.beginArray();
        while (json.hasNext()) {
            json.beginArray();
            points.add(new Coordinate(json.nextDouble(), json.nextDouble()));
            json.endArray();
            if (points.size() > MOST_POINTS) {
                throw refuse("an outline has more than " + MOST_POINTS + " points", "thin it out", null);
            }
        }
        json.endArray();
        if (points.isEmpty()) {
            throw refuse("shape.data is empty", "give the outline as a list of points", null);
        }
        return points;
    }

    private Refusal refuse(String what, String remedy, Exception cause) {
        return new Refusal(where(), what, remedy, cause);
    }

    private String where() {
        return fileName + ":" + lines.line();
    }
}
