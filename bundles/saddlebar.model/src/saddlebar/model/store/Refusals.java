package saddlebar.model.store;

import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.ClassNotFoundException;
import org.eclipse.emf.ecore.xmi.FeatureNotFoundException;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.PackageNotFoundException;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.xml.sax.SAXParseException;

import saddlebar.model.problem.Refusal;

/** Words a failed reading of a model file, with its line where one is known. */
final class Refusals {
    static final String RESTORE = "put back an earlier generation of the file from .generations, or mend it";

    private Refusals() {
    }

    static Refusal ofXml(String where, Throwable failure) {
        for (Throwable cause = failure; cause != null && cause != cause.getCause(); cause = cause.getCause()) {
            if (cause instanceof Refusal refusal) {
                return refusal;
            }
            if (cause instanceof SAXParseException parse) {
                return ofParse(where, parse);
            }
            if (cause instanceof XMIException xmi && xmi.getLine() > 0) {
                return ofXmi(where, xmi);
            }
        }
        if (failure instanceof Resource.IOWrappedException || failure instanceof RuntimeException) {
            return new Refusal(where, "cannot be read: " + sentence(failure.getMessage()), RESTORE, failure);
        }
        return new Refusal(where, "cannot be read: " + sentence(failure.getMessage()), "look whether the disk and its rights are in order", failure);
    }

    static Refusal ofXmi(String where, XMIException xmi) {
        String what;
        if (xmi instanceof IllegalValueException value) {
            what = "the value \"" + value.getValue() + "\" does not fit " + value.getFeature().getName();
        } else if (xmi instanceof FeatureNotFoundException feature) {
            what = "has \"" + feature.getName() + "\", which the format does not know here";
        } else if (xmi instanceof ClassNotFoundException unknown) {
            what = "has a \"" + unknown.getName() + "\", which the format does not know";
        } else if (xmi instanceof PackageNotFoundException unknown) {
            what = "uses the name space \"" + unknown.uri() + "\", which the format does not know";
        } else if (xmi instanceof UnresolvedReferenceException nowhere) {
            what = "names the id \"" + nowhere.getReference() + "\", which the file does not have";
        } else {
            what = sentence(xmi.getMessage());
        }
        return new Refusal(where + ":" + Math.max(1, xmi.getLine()), what, RESTORE, xmi);
    }

    static Refusal ofParse(String where, SAXParseException parse) {
        String at = where + ":" + Math.max(1, parse.getLineNumber());
        String message = sentence(parse.getMessage());
        if (message.contains("DOCTYPE")) {
            return new Refusal(at, "has a DOCTYPE, which could bring in entities from outside", "remove the DOCTYPE", parse);
        }
        return new Refusal(at, "is not well-formed XML: " + message, RESTORE, parse);
    }

    private static String sentence(String message) {
        String text = message == null || message.isBlank() ? "no reason was given" : message.strip();
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }
}
