package saddlebar.production.bring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import saddlebar.artwork.ArtLayer;
import saddlebar.artwork.Artwork;
import saddlebar.artwork.LayerGuess;
import saddlebar.artwork.LayerHint;
import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.RoleAssignment;
import saddlebar.model.problem.Refusal;

/**
 * What each layer of an artwork is for: as the person said, else as at the last bringing, else as its name or its drawing suggests.
 *
 * @param painted   ids of layers by role, without the cutline
 * @param glass     ids of layers by colourway
 * @param cutline   id of the layer that is cut
 * @param unused    ids of layers that somebody said are for nothing
 * @param purposes  all of it, layer by layer
 * @param confirmed whether somebody said so, now or before
 */
record LayerRoles(Map<LayerRole, String> painted, Map<String, String> glass, String cutline, Set<String> unused, List<LayerPurpose> purposes,
        boolean confirmed) {

    static LayerRoles of(BringRequest request, Artwork artwork, Optional<ArtworkReference> last) {
        Settling settling = new Settling(artwork, last);
        if (!request.roles().isEmpty()) {
            settling.said(request);
        } else {
            settling.remembered();
            settling.guessed();
        }
        request.unused().forEach(name -> settling.leaveOut(artwork.chosenLayer(name)));
        settling.glass(request);
        return settling.settled(request.confirmed());
    }

    /** What is known of an artwork's layers before anything is brought; never refused for want of a cutline. */
    static List<LayerPurpose> purposes(Artwork artwork, Optional<ArtworkReference> last) {
        Settling settling = new Settling(artwork, last);
        settling.remembered();
        settling.guessed();
        settling.glass();
        return settling.purposes();
    }

    private static final class Settling {
        private final Artwork artwork;
        private final Optional<ArtworkReference> last;
        private final boolean kept;
        private final List<LayerGuess> guesses;
        private final Map<LayerRole, String> roles = new LinkedHashMap<>();
        private final Map<String, LayerPurpose.Source> sources = new LinkedHashMap<>();
        private final Map<String, String> glass = new LinkedHashMap<>();
        private final Set<String> unused = new LinkedHashSet<>();
        private LayerPurpose.Source others = LayerPurpose.Source.GUESSED;

        Settling(Artwork artwork, Optional<ArtworkReference> last) {
            this.artwork = artwork;
            this.last = last;
            this.kept = last.filter(ArtworkReference::isRolesConfirmed).isPresent();
            this.guesses = artwork.guesses();
        }

        void said(BringRequest request) {
            others = LayerPurpose.Source.SAID; // who names some says of the others that they are for nothing
            request.roles().forEach((role, name) -> put(role, artwork.chosenLayer(name).id(), LayerPurpose.Source.SAID));
            if (!roles.containsKey(LayerRole.CUTLINE)) {
                guesses.stream().filter(guess -> guess.hint() == LayerHint.CUTLINE && !roles.containsValue(guess.layer().id())).findFirst()
                        .ifPresent(guess -> put(LayerRole.CUTLINE, guess.layer().id(), LayerPurpose.Source.GUESSED));
            }
        }

        void leaveOut(ArtLayer layer) {
            unused.add(layer.id());
            sources.put(layer.id(), LayerPurpose.Source.SAID);
        }

        private void put(LayerRole role, String id, LayerPurpose.Source source) {
            roles.put(role, id);
            sources.put(id, source);
        }

        void remembered() {
            if (last.isEmpty()) {
                return;
            }
            for (RoleAssignment role : last.get().getRoles()) {
                artwork.layer(role.getArtLayer()).ifPresent(layer -> put(role.getRole(), role.getArtLayer(), LayerPurpose.Source.REMEMBERED));
            }
            last.get().getUnusedLayers().forEach(name -> artwork.layer(name).ifPresent(layer -> {
                unused.add(layer.id());
                sources.put(layer.id(), LayerPurpose.Source.REMEMBERED);
            }));
        }

        void guessed() {
            for (LayerGuess guess : guesses) {
                if (!unused.contains(guess.layer().id()) && !hasRole(guess.layer())) {
                    LayerPurpose.role(guess.hint()).filter(role -> !roles.containsKey(role))
                            .ifPresent(role -> put(role, guess.layer().id(), LayerPurpose.Source.GUESSED));
                }
            }
        }

        void glass(BringRequest request) {
            if (!request.glass().isEmpty()) {
                request.glass().forEach((name, layer) -> {
                    glass.put(name, artwork.chosenLayer(layer).id());
                    sources.put(artwork.chosenLayer(layer).id(), LayerPurpose.Source.SAID);
                });
            } else {
                glass();
            }
        }

        void glass() {
            if (kept) {
                last.get().getGlassLayers().forEach(name -> artwork.layer(name).ifPresent(layer -> {
                    glass.put(LayerPurpose.colourway(layer.label()), layer.id());
                    sources.put(layer.id(), LayerPurpose.Source.REMEMBERED);
                }));
            }
            for (LayerGuess guess : guesses) {
                ArtLayer layer = guess.layer();
                boolean free = !unused.contains(layer.id()) && !hasRole(layer);
                if (guess.hint() == LayerHint.GLASS && free && glass.putIfAbsent(LayerPurpose.colourway(layer.label()), layer.id()) == null) {
                    sources.putIfAbsent(layer.id(), LayerPurpose.Source.GUESSED);
                }
            }
        }

        LayerRoles settled(boolean confirmed) {
            List<LayerPurpose> purposes = purposes();
            Map<LayerRole, String> painted = new LinkedHashMap<>(roles);
            String cutline = painted.remove(LayerRole.CUTLINE);
            if (cutline == null) {
                throw new Refusal(artwork.file().getFileName().toString(), "no layer looks like the cutline",
                        "name it with its role, for instance cutline=NAME; there are "
                                + String.join(", ", artwork.layers().stream().map(ArtLayer::label).toList()));
            }
            Set<String> out = new LinkedHashSet<>(unused);
            if (confirmed || kept) { // who says what layers are for says of the others that they are for nothing
                purposes.stream().filter(purpose -> purpose.purpose().equals(LayerPurpose.NONE)).forEach(purpose -> out.add(purpose.id()));
            }
            return new LayerRoles(painted, glass, cutline, out, purposes, confirmed || kept);
        }

        /** One line for each layer that has a purpose, or of whose depth others have one. */
        List<LayerPurpose> purposes() {
            List<LayerPurpose> all = new ArrayList<>();
            for (LayerGuess guess : guesses) {
                ArtLayer layer = guess.layer();
                String purpose = purpose(layer);
                LayerPurpose.Source source = sources.getOrDefault(layer.id(), sources.getOrDefault(layer.label(), others));
                boolean own = purpose.equals(LayerPurpose.of(guess.hint()));
                all.add(new LayerPurpose(layer.id(), layer.label(), purpose, source, own ? guess.ground() : LayerGuess.Ground.NOTHING));
            }
            int depth = artwork.layers().stream().filter(layer -> isUsed(layer, all)).mapToInt(ArtLayer::depth).min().orElse(0);
            return all.stream().filter(one -> !one.purpose().equals(LayerPurpose.NONE) || artwork.chosenLayer(one.id()).depth() <= depth).toList();
        }

        private static boolean isUsed(ArtLayer layer, List<LayerPurpose> all) {
            return all.stream().anyMatch(one -> one.id().equals(layer.id()) && !one.purpose().equals(LayerPurpose.NONE));
        }

        private boolean hasRole(ArtLayer layer) {
            return roles.values().stream().anyMatch(name -> artwork.layer(name).filter(layer::equals).isPresent());
        }

        private String purpose(ArtLayer layer) {
            for (Map.Entry<LayerRole, String> role : roles.entrySet()) {
                if (artwork.layer(role.getValue()).filter(layer::equals).isPresent()) {
                    return role.getKey().getLiteral();
                }
            }
            return glass.containsValue(layer.id()) ? LayerPurpose.GLASS : LayerPurpose.NONE;
        }
    }
}
