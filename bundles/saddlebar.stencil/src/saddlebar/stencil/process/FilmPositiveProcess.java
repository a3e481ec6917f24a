package saddlebar.stencil.process;

import org.osgi.service.component.annotations.Component;

/** A film that shades a light-sensitive emulsion: what stays dark washes out and is open, so what must print is black. */
@Component(service = StencilProcess.class)
public final class FilmPositiveProcess implements StencilProcess {
    @Override
    public String key() {
        return "film-positive";
    }

    @Override
    public boolean printsWhite() {
        return false;
    }

    @Override
    public String caution() {
        return "Emulsion and its sensitiser irritate skin and eyes, and the exposure lamp harms the eyes: wear gloves and do not look into the lamp.";
    }
}
