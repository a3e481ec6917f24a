package saddlebar.artwork.svg;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.w3c.dom.Element;

import saddlebar.artwork.ArtLayer;
import saddlebar.artwork.LayerHint;

/** Gathers the groups of a drawing while it is walked, with what is drawn in each. Belongs to one thread. */
final class LayerList {
    private static final class Entry {
        String id;
        String label;
        int depth;
        String parent = "";
        boolean hidden;
        String place;
        int inner;
        int lines;
        int letters;
        int others;
        Element element;

        int count() {
            return lines + letters + others;
        }
    }

    private final Findings findings;
    private final List<Entry> all = new ArrayList<>();
    private final Deque<Entry> open = new ArrayDeque<>();
    private final Set<String> ids = new HashSet<>();
    private int top;
    private int paused;

    LayerList(Findings findings) {
        this.findings = findings;
    }

    /** Begins a group; the id under which it can be chosen comes back. */
    String begin(Element group, boolean hidden) {
        Entry entry = new Entry();
        Entry parent = open.peek();
        entry.place = parent == null ? Integer.toString(++top) : parent.place + "." + ++parent.inner;
        entry.depth = open.size();
        entry.parent = parent == null ? "" : parent.id;
        entry.hidden = hidden;
        entry.element = group;
        String own = Source.id(group);
        entry.id = own.isBlank() ? "group-" + entry.place : own;
        if (!ids.add(entry.id)) {
            String other = "group-" + entry.place;
            findings.warn("art-layer", group, "id", "the id " + entry.id + " is used twice; this group is called " + other + " here");
            entry.id = other;
            ids.add(other);
        }
        String label = Source.get(group, Source.Note.LABEL);
        entry.label = label.isBlank() ? entry.id : label;
        all.add(entry);
        open.push(entry);
        return entry.id;
    }

    void end() {
        open.pop();
    }

    /** What a mask or a pattern shows is not counted. */
    void pause(boolean on) {
        paused += on ? 1 : -1;
    }

    /** A shape with a stroke and no fill. */
    void line() {
        if (paused == 0) {
            open.forEach(entry -> entry.lines++);
        }
    }

    void letters() {
        if (paused == 0) {
            open.forEach(entry -> entry.letters++);
        }
    }

    void other() {
        if (paused == 0) {
            open.forEach(entry -> entry.others++);
        }
    }

    List<ArtLayer> layers() {
        List<ArtLayer> layers = new ArrayList<>();
        for (Entry entry : all) {
            layers.add(layer(entry, LayerHints.of(entry.label)));
        }
        if (layers.stream().noneMatch(layer -> layer.hint() == LayerHint.CUTLINE)) {
            for (int i = 0; i < layers.size(); i++) { // by what is in it: nothing but lines, perhaps with numbers beside them
                Entry entry = all.get(i);
                if (layers.get(i).hint() == LayerHint.NONE && entry.depth == 0 && !entry.hidden && entry.lines > 0 && entry.others == 0) {
                    layers.set(i, layer(entry, LayerHint.CUTLINE));
                    break;
                }
            }
        }
        for (int i = 0; i < layers.size(); i++) {
            if (layers.get(i).hint() == LayerHint.CUTLINE && all.get(i).letters > 0) {
                findings.note("art-layer", all.get(i).element, "letters", "the layer \"" + layers.get(i).label()
                        + "\" looks like the cutline and holds text; text is not taken as a line to cut");
            }
        }
        return layers;
    }

    private static ArtLayer layer(Entry entry, LayerHint hint) {
        return new ArtLayer(entry.id, entry.label, entry.depth, entry.parent, entry.count(), entry.hidden, hint);
    }
}
