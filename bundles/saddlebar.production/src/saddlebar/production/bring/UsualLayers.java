package saddlebar.production.bring;

import java.util.Comparator;
import java.util.Optional;

import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Face;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.PaintKind;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.ToneMode;
import saddlebar.stencil.tone.EndLimits;

/**
 * A new layer as most makers would begin: lines and letters solid, shading as dots of 40 lines an inch within what the mesh holds, silver stain as
 * scattered dots on the exterior face and fired last (common practice, no source). Everything can be changed afterwards.
 */
final class UsualLayers {
    private static final double USUAL_MESH = 220;

    private UsualLayers() {
    }

    static DesignLayer of(LayerRole role, String artLayer, Studio studio) {
        DesignLayer layer = CommissionFactory.eINSTANCE.createDesignLayer();
        layer.setRole(role);
        layer.setName(role.getLiteral());
        layer.setArtLayer(artLayer);
        layer.setFace(role == LayerRole.STAIN ? Face.EXTERIOR : Face.INTERIOR);
        layer.setFiringOrder(switch (role) {
            case MATT -> 2;
            case ENAMEL -> 3;
            case STAIN -> 4;
            default -> 1;
        });
        layer.setPaint(paint(role, studio).orElse(null));
        Optional<Mesh> mesh = mesh(studio);
        layer.setMesh(mesh.orElse(null));
        layer.setRecipe(recipe(role, mesh));
        return layer;
    }

    /** The first of its kind as the studio lists them. */
    private static Optional<Paint> paint(LayerRole role, Studio studio) {
        PaintKind kind = switch (role) {
            case MATT -> PaintKind.MATT;
            case STAIN -> PaintKind.STAIN;
            case ENAMEL -> PaintKind.ENAMEL;
            default -> PaintKind.TRACE;
        };
        return studio.getPaints().stream().filter(paint -> paint.getKind() == kind).findFirst();
    }

    /** The mesh nearest to the usual one that a frame in use carries. */
    private static Optional<Mesh> mesh(Studio studio) {
        return studio.getFrames().stream().filter(frame -> !frame.isOutOfUse() && frame.getMesh() != null).map(ScreenFrame::getMesh)
                .min(Comparator.comparingDouble((Mesh mesh) -> Math.abs(mesh.getThreadsPerInch() - USUAL_MESH)).thenComparing(Mesh::getThreadUm)
                        .thenComparing(Mesh::getName));
    }

    private static StencilRecipe recipe(LayerRole role, Optional<Mesh> mesh) {
        StencilRecipe recipe = CommissionFactory.eINSTANCE.createStencilRecipe();
        switch (role) {
            case MATT, ENAMEL -> {
                recipe.setMethod("am");
                recipe.setToneMode(ToneMode.STRETCH);
                mesh.ifPresent(woven -> {
                    var fabric = new saddlebar.stencil.mesh.Mesh(woven.getThreadsPerInch(), woven.getThreadUm());
                    EndLimits ends = EndLimits.ofRoundDots(fabric.finestDotUm(), fabric.finestBridgeUm(), recipe.getLpi());
                    recipe.setEndLow(ends.least());
                    recipe.setEndHigh(ends.most());
                });
            }
            case STAIN -> {
                recipe.setMethod("diffusion");
                recipe.setToneMode(ToneMode.STRETCH);
            }
            default -> {
                recipe.setMethod("solid");
                recipe.setToneMode(ToneMode.LINEAR);
            }
        }
        return recipe;
    }
}
