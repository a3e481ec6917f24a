package saddlebar.stencil.process;

import org.osgi.service.component.annotations.Component;

/** Heat-transfer film: its toner fuses to the mesh and closes it, bare film leaves it open, so what must print is white. */
@Component(service = StencilProcess.class)
public final class FusedSheetProcess implements StencilProcess {
    @Override
    public String key() {
        return "fused-sheet";
    }

    @Override
    public boolean printsWhite() {
        return true;
    }

    @Override
    public String caution() {
        return "The press and the sheet are hot (about 121 degrees C): wear gloves, and let the screen cool before the sheet is peeled.";
    }
}
