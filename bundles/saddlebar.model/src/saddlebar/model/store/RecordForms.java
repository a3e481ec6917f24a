package saddlebar.model.store;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.common.util.EMap;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.MakingRecord;

/**
 * Records as lines and as objects of the model. What a kind's class knows by name stands among the settings under that name; every other
 * setting is kept beside, and a value that does not fit its feature too, so that nothing in a line is lost.
 */
public final class RecordForms {
    private RecordForms() {
    }

    /** The line as an object; of class {@code OtherRecord} if this version does not know its kind. */
    public static MakingRecord toModel(RecordLine line) {
        EClass eClass = RecordKind.ofKey(line.kind()).map(RecordKind::eClass).orElse(CommissionPackage.Literals.OTHER_RECORD);
        MakingRecord object = (MakingRecord) EcoreUtil.create(eClass);
        object.setId(line.id());
        object.setTime(line.time());
        object.setKind(line.kind());
        object.setWho(line.who());
        object.setWriter(line.writer());
        object.getUsed().addAll(line.used());
        object.getMade().addAll(line.made());
        object.getSupersedes().addAll(line.supersedes());
        object.setNote(line.note());
        object.setFile(line.file());
        object.setLine(line.line());
        EMap<String, String> others = object.getSettings();
        line.settings().forEach((name, value) -> {
            EStructuralFeature feature = own(eClass, name);
            if (feature == null || !take(object, feature, value)) {
                others.put(name, value instanceof String text ? text : Json.write(value));
            }
        });
        return object;
    }

    /** A draft of the object's words; id and time are the book's to give where the object has none. */
    public static RecordDraft draft(MakingRecord object) {
        String kind = RecordKind.of(object.eClass()).map(RecordKind::key).orElse(object.getKind());
        Map<String, Object> settings = values(object);
        object.getSettings().forEach(entry -> settings.put(entry.getKey(), entry.getValue()));
        return new RecordDraft(Optional.ofNullable(object.getId()), Optional.ofNullable(object.getTime()), kind,
                Optional.ofNullable(object.getWho()).filter(who -> !who.isEmpty()), object.getUsed(), object.getMade(), settings,
                object.getSupersedes(), object.getNote() == null ? "" : object.getNote());
    }

    private static EStructuralFeature own(EClass eClass, String name) {
        EStructuralFeature feature = eClass.getEStructuralFeature(name);
        return feature == null || feature.getEContainingClass() == CommissionPackage.Literals.MAKING_RECORD ? null : feature;
    }

    private static Map<String, Object> values(EObject object) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
            if (feature.getEContainingClass() == CommissionPackage.Literals.MAKING_RECORD) {
                continue;
            }
            Object value = object.eGet(feature);
            if (value instanceof List<?> list) {
                if (!list.isEmpty()) {
                    values.put(feature.getName(), list.stream().map(RecordForms::plain).toList());
                }
            } else if (value != null) { // defaults too: a record does not lean on what a later version takes for granted
                values.put(feature.getName(), plain(value));
            }
        }
        return values;
    }

    private static Object plain(Object value) {
        if (value instanceof EObject object) {
            return values(object);
        }
        if (value instanceof Enumerator literal) {
            return literal.getLiteral();
        }
        if (value instanceof BigDecimal money) {
            return money.toPlainString(); // money as decimal text: no reader may round it
        }
        if (value instanceof Integer number) {
            return number.longValue();
        }
        return value;
    }

    private static boolean take(EObject object, EStructuralFeature feature, Object value) {
        if (!feature.isMany()) {
            Optional<Object> fitting = fitting(feature, value);
            fitting.ifPresent(fit -> object.eSet(feature, fit));
            return fitting.isPresent();
        }
        if (!(value instanceof List<?> list)) {
            return false;
        }
        List<Object> all = new ArrayList<>();
        for (Object item : list) {
            Optional<Object> fitting = fitting(feature, item);
            if (fitting.isEmpty()) {
                return false;
            }
            all.add(fitting.get());
        }
        object.eSet(feature, all);
        return true;
    }

    private static Optional<Object> fitting(EStructuralFeature feature, Object value) {
        if (feature instanceof EReference reference) {
            return value instanceof Map<?, ?> map ? inner(reference.getEReferenceType(), map) : Optional.empty();
        }
        return fitting(((EAttribute) feature).getEAttributeType(), value);
    }

    private static Optional<Object> inner(EClass eClass, Map<?, ?> map) {
        EObject object = EcoreUtil.create(eClass);
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            EStructuralFeature feature = eClass.getEStructuralFeature((String) entry.getKey());
            if (feature == null || !take(object, feature, entry.getValue())) {
                return Optional.empty(); // the whole stays among the other settings
            }
        }
        return Optional.of(object);
    }

    private static Optional<Object> fitting(EDataType type, Object value) {
        Class<?> java = type.getInstanceClass();
        if (type instanceof EEnum literals) {
            EEnumLiteral literal = value instanceof String text ? literals.getEEnumLiteralByLiteral(text) : null;
            return Optional.ofNullable(literal).map(EEnumLiteral::getInstance);
        }
        if (java == BigDecimal.class) {
            return value instanceof String text ? money(text) : value instanceof Number n ? money(n.toString()) : Optional.empty();
        }
        if (java == String.class || java == boolean.class || java == Boolean.class) {
            boolean fits = java == String.class ? value instanceof String : value instanceof Boolean;
            return fits ? Optional.of(value) : Optional.empty();
        }
        if (!(value instanceof Number number)) {
            return Optional.empty();
        }
        if (java == int.class || java == Integer.class) {
            return number instanceof Long whole && whole == whole.intValue() ? Optional.of(whole.intValue()) : Optional.empty();
        }
        if (java == long.class || java == Long.class) {
            return number instanceof Long ? Optional.of(number) : Optional.empty();
        }
        if (java == double.class || java == Double.class) {
            return Optional.of(number.doubleValue());
        }
        return Optional.empty();
    }

    private static Optional<Object> money(String text) {
        try {
            return Optional.of(new BigDecimal(text));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
