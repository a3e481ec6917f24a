package saddlebar.codegen;

import java.io.IOException;
import java.nio.file.Path;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceFactoryImpl;

/**
 * Rewrites the committed Java code of a model from its genmodel, without a workspace. A second run gives the same bytes; bodies marked
 * {@code @generated NOT} stay. Arguments: the bundle's folder, the genmodel's path within it.
 */
public final class GenerateModel {
    private GenerateModel() {
    }

    public static void main(String[] args) throws IOException {
        Path bundle = Path.of(args[0]).toRealPath(); // a trailing ".." would give the bundle a wrong name
        String id = bundle.getFileName().toString();
        ResourceSetImpl set = new ResourceSetImpl();
        set.getResourceFactoryRegistry().getExtensionToFactoryMap().put("ecore", new EcoreResourceFactoryImpl());
        set.getResourceFactoryRegistry().getExtensionToFactoryMap().put("genmodel", new XMIResourceFactoryImpl());
        EcorePackage.eINSTANCE.eClass();
        GenModelPackage.eINSTANCE.eClass();
        set.getURIConverter().getURIMap().putAll(EcorePlugin.computePlatformURIMap(true)); // finds Ecore.genmodel on the class path
        EcorePlugin.getPlatformResourceMap().put(id, URI.createFileURI(bundle + "/"));
        GenModel model = (GenModel) set.getResource(URI.createURI("platform:/resource/" + id + "/" + args[1]), true).getContents().get(0);
        EcoreUtil.resolveAll(set);
        model.getGenPackages().forEach(genPackage -> require(Diagnostician.INSTANCE.validate(genPackage.getEcorePackage())));
        model.setCanGenerate(true);
        model.reconcile();
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(GenModelPackage.eNS_URI, GenModelGeneratorAdapterFactory.DESCRIPTOR);
        Generator generator = new Generator();
        generator.setInput(model);
        require(generator.generate(model, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor()));
    }

    private static void require(Diagnostic result) {
        if (result.getSeverity() > Diagnostic.INFO) {
            throw new IllegalStateException(result + " " + result.getChildren());
        }
    }
}
