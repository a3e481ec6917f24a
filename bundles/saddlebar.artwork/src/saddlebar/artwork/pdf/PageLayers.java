package saddlebar.artwork.pdf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentMembershipDictionary;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

import saddlebar.artwork.ArtLayer;
import saddlebar.artwork.LayerHint;
import saddlebar.artwork.svg.LayerHints;

/** The optional content groups of a file (ISO 32000-1, 8.11) as layers, with what a page draws in each. Belongs to one thread. */
final class PageLayers {
    private static final class Entry {
        private final String id;
        private final String label;
        private final boolean hidden;
        private int lines;
        private int letters;
        private int others;

        Entry(String id, String label, boolean hidden) {
            this.id = id;
            this.label = label;
            this.hidden = hidden;
        }
    }

    /**
     * What a stretch of the page belongs to.
     *
     * @param id     of the layer, empty if what it names is no group of the file
     * @param hidden whether it is switched off
     */
    record Membership(Optional<String> id, boolean hidden) {
    }

    private static final int MOST_RULES = 20;

    private final PageFindings findings;
    private final Map<COSDictionary, Entry> entries = new IdentityHashMap<>();
    private final List<Entry> inOrder = new ArrayList<>();

    PageLayers(PDDocument document, PageFindings findings) {
        this.findings = findings;
        PDOptionalContentProperties properties = document.getDocumentCatalog().getOCProperties();
        if (properties == null) {
            return;
        }
        for (PDOptionalContentGroup group : properties.getOptionalContentGroups()) {
            String id = "layer-" + (inOrder.size() + 1);
            String name = group.getName();
            Entry entry = new Entry(id, name == null || name.isBlank() ? id : name.strip(), !properties.isGroupEnabled(group));
            if (entries.putIfAbsent(group.getCOSObject(), entry) == null) {
                inOrder.add(entry);
            }
        }
    }

    /** @param properties an optional content group or membership dictionary; empty if it is neither */
    Optional<Membership> membership(PDPropertyList properties) {
        if (properties instanceof PDOptionalContentGroup group) {
            Entry entry = entries.get(group.getCOSObject());
            return Optional.of(entry == null ? new Membership(Optional.empty(), false) : new Membership(Optional.of(entry.id), entry.hidden));
        }
        return properties instanceof PDOptionalContentMembershipDictionary several ? Optional.of(membership(several)) : Optional.empty();
    }

    private Membership membership(PDOptionalContentMembershipDictionary several) {
        List<Entry> members = several.getOCGs().stream().map(one -> entries.get(one.getCOSObject())).filter(one -> one != null).toList();
        if (several.getCOSObject().containsKey(COSName.getPDFName("VE"))) {
            return byRule(several.getCOSObject().getDictionaryObject(COSName.getPDFName("VE")));
        }
        if (members.isEmpty()) {
            return new Membership(Optional.empty(), false);
        }
        if (members.size() > 1) {
            findings.note("art-layer", "something belongs to several layers; it is counted to the first, \"" + members.get(0).label + "\"");
        }
        boolean anyOn = members.stream().anyMatch(one -> !one.hidden);
        boolean allOn = members.stream().noneMatch(one -> one.hidden);
        boolean shown = switch (several.getVisibilityPolicy().getName()) {
            case "AllOn" -> allOn;
            case "AnyOff" -> !allOn;
            case "AllOff" -> !anyOn;
            default -> anyOn;
        };
        return new Membership(Optional.of(members.get(0).id), !shown);
    }

    /** ISO 32000-1, 8.11.2.2: a rule of And, Or and Not over layers; it is counted to the first layer that it names. */
    private Membership byRule(COSBase rule) {
        List<Entry> named = new ArrayList<>();
        boolean shown = holds(rule, named, 0);
        return new Membership(named.stream().findFirst().map(entry -> entry.id), !shown);
    }

    private boolean holds(COSBase rule, List<Entry> named, int depth) {
        if (rule instanceof COSDictionary group) {
            Entry entry = entries.get(group);
            if (entry != null) {
                named.add(entry);
            }
            return entry == null || !entry.hidden;
        }
        if (!(rule instanceof COSArray parts) || parts.size() == 0 || depth > MOST_RULES) {
            findings.warn("art-layer", "a rule over layers cannot be read; what it rules is shown");
            return true;
        }
        List<Boolean> held = new ArrayList<>();
        for (int i = 1; i < parts.size(); i++) {
            held.add(holds(parts.getObject(i), named, depth + 1));
        }
        return switch (parts.getObject(0) instanceof COSName word ? word.getName() : "") {
            case "Not" -> !held.isEmpty() && !held.get(0);
            case "Or" -> held.contains(true);
            default -> !held.contains(false);
        };
    }

    /** Counts one drawn thing for all layers that it stands in. */
    void count(Iterable<String> ids, boolean lineOnly, boolean letters) {
        Set<String> counted = new HashSet<>();
        ids.forEach(counted::add);
        for (Entry entry : inOrder) {
            if (counted.contains(entry.id)) {
                if (letters) {
                    entry.letters++;
                } else if (lineOnly) {
                    entry.lines++;
                } else {
                    entry.others++;
                }
            }
        }
    }

    List<String> ids() {
        return inOrder.stream().map(entry -> entry.id).toList();
    }

    List<ArtLayer> layers() {
        List<ArtLayer> layers = new ArrayList<>();
        for (Entry entry : inOrder) {
            layers.add(layer(entry, LayerHints.of(entry.label)));
        }
        if (layers.stream().noneMatch(layer -> layer.hint() == LayerHint.CUTLINE)) {
            for (int i = 0; i < layers.size(); i++) { // by what is in it: nothing but lines, perhaps with numbers beside them
                Entry entry = inOrder.get(i);
                if (layers.get(i).hint() == LayerHint.NONE && !entry.hidden && entry.lines > 0 && entry.others == 0) {
                    layers.set(i, layer(entry, LayerHint.CUTLINE));
                    break;
                }
            }
        }
        return layers;
    }

    private static ArtLayer layer(Entry entry, LayerHint hint) {
        return new ArtLayer(entry.id, entry.label, 0, "", entry.lines + entry.letters + entry.others, entry.hidden, hint);
    }
}
