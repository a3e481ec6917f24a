package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;
import org.junit.jupiter.api.Test;

import saddlebar.model.commission.CommissionPackage;

/** The model as drawn in model/commission.ecore and as generated into src-gen. */
class ModelTest {
    private static EPackage drawn() {
        ResourceSetImpl set = new ResourceSetImpl();
        set.getResourceFactoryRegistry().getExtensionToFactoryMap().put("ecore", new EcoreResourceFactoryImpl());
        Resource resource = set.getResource(URI.createFileURI(java.nio.file.Path.of("model/commission.ecore").toAbsolutePath().toString()), true);
        return (EPackage) resource.getContents().get(0);
    }

    /** A shape of the package in words; fails when somebody changed the ecore file and did not run releng/saddlebar.codegen. */
    private static Set<String> words(EPackage model) {
        Set<String> words = new TreeSet<>(List.of(model.getNsURI()));
        for (EClassifier classifier : model.getEClassifiers()) {
            String name = classifier.getName();
            boolean data = classifier instanceof EDataType && !(classifier instanceof EEnum);
            words.add(name + " " + classifier.eClass().getName() + (data ? " " + classifier.getInstanceClassName() : ""));
            if (classifier instanceof EEnum literals) {
                literals.getELiterals().forEach(literal -> words.add(name + "." + literal.getName() + "=" + literal.getValue() + literal.getLiteral()));
            } else if (classifier instanceof EClass eClass) {
                eClass.getESuperTypes().forEach(parent -> words.add(name + " is " + parent.getName()));
                eClass.getEStructuralFeatures().forEach(feature -> words.add(name + "." + words(feature)));
            }
        }
        return words;
    }

    private static String words(EStructuralFeature feature) {
        String words = feature.getName() + " " + feature.getEType().getName() + " " + feature.getLowerBound() + ".." + feature.getUpperBound()
                + " default " + feature.getDefaultValueLiteral() + " transient " + feature.isTransient();
        if (feature instanceof EReference reference) {
            return words + " containment " + reference.isContainment() + " resolving " + reference.isResolveProxies() + " opposite "
                    + (reference.getEOpposite() == null ? "" : reference.getEOpposite().getName());
        }
        return words + " id " + ((EAttribute) feature).isID();
    }

    @Test
    void theGeneratedCodeIsThatOfTheDrawing() {
        Set<String> drawn = words(drawn());
        assertTrue(drawn.size() > 500, "only " + drawn.size() + " things are drawn");
        assertEquals(String.join("\n", drawn), String.join("\n", words(CommissionPackage.eINSTANCE)));
    }

    /** A link inside one file has an opposite, or leads to where a cross-referencer is the way back. */
    @Test
    void everyContainmentInTheModelKnowsItsContainer() {
        for (EClassifier classifier : CommissionPackage.eINSTANCE.getEClassifiers()) {
            if (classifier instanceof EClass eClass) {
                for (EReference reference : eClass.getEReferences()) {
                    boolean ofRecord = CommissionPackage.Literals.MAKING_RECORD.isSuperTypeOf(eClass);
                    boolean files = reference.getEReferenceType() == CommissionPackage.Literals.MADE_FILE;
                    if (reference.isContainment() && !ofRecord && !files) {
                        assertNotNull(reference.getEOpposite(), eClass.getName() + "." + reference.getName());
                    }
                }
            }
        }
    }

    @Test
    void lengthsTemperaturesAndAnglesSayTheirUnit() {
        for (EClassifier classifier : CommissionPackage.eINSTANCE.getEClassifiers()) {
            if (classifier instanceof EClass eClass) {
                for (EAttribute attribute : eClass.getEAttributes()) {
                    String name = attribute.getName();
                    boolean number = attribute.getEAttributeType().getInstanceClass() == double.class
                            || attribute.getEAttributeType().getInstanceClass() == Double.class;
                    if (number && !name.endsWith("Share")
                            && name.matches(".*(?i:width|height|depth|margin|gap|bleed|thickness|angle|rotation|mass|density).*")) {
                        assertTrue(name.matches(".*(Mm|Um|Deg|G|Kg|PerM|PerM3|PerCm3)"), eClass.getName() + "." + name + " has no unit in its name");
                    }
                }
            }
        }
    }
}
