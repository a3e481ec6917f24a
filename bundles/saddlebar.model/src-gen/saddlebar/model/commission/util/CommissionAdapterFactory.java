/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.util;

import java.util.Map;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.Notifier;

import org.eclipse.emf.common.notify.impl.AdapterFactoryImpl;

import org.eclipse.emf.ecore.EObject;

import saddlebar.model.commission.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Adapter Factory</b> for the model.
 * It provides an adapter <code>createXXX</code> method for each class of the model.
 * <!-- end-user-doc -->
 * @see saddlebar.model.commission.CommissionPackage
 * @generated
 */
public class CommissionAdapterFactory extends AdapterFactoryImpl {
	/**
	 * The cached model package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static CommissionPackage modelPackage;

	/**
	 * Creates an instance of the adapter factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CommissionAdapterFactory() {
		if (modelPackage == null) {
			modelPackage = CommissionPackage.eINSTANCE;
		}
	}

	/**
	 * Returns whether this factory is applicable for the type of the object.
	 * <!-- begin-user-doc -->
	 * This implementation returns <code>true</code> if the object is either the model's package or is an instance object of the model.
	 * <!-- end-user-doc -->
	 * @return whether this factory is applicable for the type of the object.
	 * @generated
	 */
	@Override
	public boolean isFactoryForType(Object object) {
		if (object == modelPackage) {
			return true;
		}
		if (object instanceof EObject) {
			return ((EObject)object).eClass().getEPackage() == modelPackage;
		}
		return false;
	}

	/**
	 * The switch that delegates to the <code>createXXX</code> methods.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CommissionSwitch<Adapter> modelSwitch =
		new CommissionSwitch<Adapter>() {
			@Override
			public Adapter caseIdentified(Identified object) {
				return createIdentifiedAdapter();
			}
			@Override
			public Adapter caseNamed(Named object) {
				return createNamedAdapter();
			}
			@Override
			public Adapter caseMadeFile(MadeFile object) {
				return createMadeFileAdapter();
			}
			@Override
			public Adapter caseStudio(Studio object) {
				return createStudioAdapter();
			}
			@Override
			public Adapter caseJoinedCommission(JoinedCommission object) {
				return createJoinedCommissionAdapter();
			}
			@Override
			public Adapter casePaperSize(PaperSize object) {
				return createPaperSizeAdapter();
			}
			@Override
			public Adapter caseMesh(Mesh object) {
				return createMeshAdapter();
			}
			@Override
			public Adapter caseScreenFrame(ScreenFrame object) {
				return createScreenFrameAdapter();
			}
			@Override
			public Adapter casePaint(Paint object) {
				return createPaintAdapter();
			}
			@Override
			public Adapter casePaintLot(PaintLot object) {
				return createPaintLotAdapter();
			}
			@Override
			public Adapter caseMedium(Medium object) {
				return createMediumAdapter();
			}
			@Override
			public Adapter caseGlassStock(GlassStock object) {
				return createGlassStockAdapter();
			}
			@Override
			public Adapter caseJoinStock(JoinStock object) {
				return createJoinStockAdapter();
			}
			@Override
			public Adapter caseSolderStock(SolderStock object) {
				return createSolderStockAdapter();
			}
			@Override
			public Adapter caseBarStock(BarStock object) {
				return createBarStockAdapter();
			}
			@Override
			public Adapter caseKiln(Kiln object) {
				return createKilnAdapter();
			}
			@Override
			public Adapter caseFiringSchedule(FiringSchedule object) {
				return createFiringScheduleAdapter();
			}
			@Override
			public Adapter caseFiringSegment(FiringSegment object) {
				return createFiringSegmentAdapter();
			}
			@Override
			public Adapter casePriceBook(PriceBook object) {
				return createPriceBookAdapter();
			}
			@Override
			public Adapter casePriceItem(PriceItem object) {
				return createPriceItemAdapter();
			}
			@Override
			public Adapter casePrinter(Printer object) {
				return createPrinterAdapter();
			}
			@Override
			public Adapter caseSheetStock(SheetStock object) {
				return createSheetStockAdapter();
			}
			@Override
			public Adapter caseToneCalibration(ToneCalibration object) {
				return createToneCalibrationAdapter();
			}
			@Override
			public Adapter caseTonePoint(TonePoint object) {
				return createTonePointAdapter();
			}
			@Override
			public Adapter caseProcessSetting(ProcessSetting object) {
				return createProcessSettingAdapter();
			}
			@Override
			public Adapter casePerson(Person object) {
				return createPersonAdapter();
			}
			@Override
			public Adapter caseSupplier(Supplier object) {
				return createSupplierAdapter();
			}
			@Override
			public Adapter caseCommission(Commission object) {
				return createCommissionAdapter();
			}
			@Override
			public Adapter caseClient(Client object) {
				return createClientAdapter();
			}
			@Override
			public Adapter caseSite(Site object) {
				return createSiteAdapter();
			}
			@Override
			public Adapter caseMilestone(Milestone object) {
				return createMilestoneAdapter();
			}
			@Override
			public Adapter caseQuote(Quote object) {
				return createQuoteAdapter();
			}
			@Override
			public Adapter caseQuoteLine(QuoteLine object) {
				return createQuoteLineAdapter();
			}
			@Override
			public Adapter caseApproval(Approval object) {
				return createApprovalAdapter();
			}
			@Override
			public Adapter caseSheet(Sheet object) {
				return createSheetAdapter();
			}
			@Override
			public Adapter casePlacement(Placement object) {
				return createPlacementAdapter();
			}
			@Override
			public Adapter caseWindow(Window object) {
				return createWindowAdapter();
			}
			@Override
			public Adapter caseOpening(Opening object) {
				return createOpeningAdapter();
			}
			@Override
			public Adapter caseColourway(Colourway object) {
				return createColourwayAdapter();
			}
			@Override
			public Adapter caseGlassChoice(GlassChoice object) {
				return createGlassChoiceAdapter();
			}
			@Override
			public Adapter casePanel(Panel object) {
				return createPanelAdapter();
			}
			@Override
			public Adapter caseArtworkReference(ArtworkReference object) {
				return createArtworkReferenceAdapter();
			}
			@Override
			public Adapter caseRoleAssignment(RoleAssignment object) {
				return createRoleAssignmentAdapter();
			}
			@Override
			public Adapter casePiece(Piece object) {
				return createPieceAdapter();
			}
			@Override
			public Adapter caseDesignLayer(DesignLayer object) {
				return createDesignLayerAdapter();
			}
			@Override
			public Adapter caseStencilRecipe(StencilRecipe object) {
				return createStencilRecipeAdapter();
			}
			@Override
			public Adapter caseStencil(Stencil object) {
				return createStencilAdapter();
			}
			@Override
			public Adapter caseStencilPiece(StencilPiece object) {
				return createStencilPieceAdapter();
			}
			@Override
			public Adapter caseSetting(Map.Entry<String, String> object) {
				return createSettingAdapter();
			}
			@Override
			public Adapter caseMakingRecord(MakingRecord object) {
				return createMakingRecordAdapter();
			}
			@Override
			public Adapter caseArtworkBrought(ArtworkBrought object) {
				return createArtworkBroughtAdapter();
			}
			@Override
			public Adapter casePiecesMade(PiecesMade object) {
				return createPiecesMadeAdapter();
			}
			@Override
			public Adapter caseStencilMade(StencilMade object) {
				return createStencilMadeAdapter();
			}
			@Override
			public Adapter caseSheetMade(SheetMade object) {
				return createSheetMadeAdapter();
			}
			@Override
			public Adapter caseDocumentMade(DocumentMade object) {
				return createDocumentMadeAdapter();
			}
			@Override
			public Adapter caseScreenLoad(ScreenLoad object) {
				return createScreenLoadAdapter();
			}
			@Override
			public Adapter caseReclaim(Reclaim object) {
				return createReclaimAdapter();
			}
			@Override
			public Adapter casePaintMix(PaintMix object) {
				return createPaintMixAdapter();
			}
			@Override
			public Adapter casePrintRun(PrintRun object) {
				return createPrintRunAdapter();
			}
			@Override
			public Adapter caseFiring(Firing object) {
				return createFiringAdapter();
			}
			@Override
			public Adapter caseRunSegment(RunSegment object) {
				return createRunSegmentAdapter();
			}
			@Override
			public Adapter caseShelfPlace(ShelfPlace object) {
				return createShelfPlaceAdapter();
			}
			@Override
			public Adapter caseGlazing(Glazing object) {
				return createGlazingAdapter();
			}
			@Override
			public Adapter caseFixing(Fixing object) {
				return createFixingAdapter();
			}
			@Override
			public Adapter caseDefect(Defect object) {
				return createDefectAdapter();
			}
			@Override
			public Adapter caseRemake(Remake object) {
				return createRemakeAdapter();
			}
			@Override
			public Adapter caseNote(Note object) {
				return createNoteAdapter();
			}
			@Override
			public Adapter caseCostLine(CostLine object) {
				return createCostLineAdapter();
			}
			@Override
			public Adapter caseStockMove(StockMove object) {
				return createStockMoveAdapter();
			}
			@Override
			public Adapter caseApproved(Approved object) {
				return createApprovedAdapter();
			}
			@Override
			public Adapter caseOtherRecord(OtherRecord object) {
				return createOtherRecordAdapter();
			}
			@Override
			public Adapter caseStockSheet(StockSheet object) {
				return createStockSheetAdapter();
			}
			@Override
			public Adapter caseGlassFlaw(GlassFlaw object) {
				return createGlassFlawAdapter();
			}
			@Override
			public Adapter caseMendedPlace(MendedPlace object) {
				return createMendedPlaceAdapter();
			}
			@Override
			public Adapter caseAcceptedMend(AcceptedMend object) {
				return createAcceptedMendAdapter();
			}
			@Override
			public Adapter caseJoinRule(JoinRule object) {
				return createJoinRuleAdapter();
			}
			@Override
			public Adapter defaultCase(EObject object) {
				return createEObjectAdapter();
			}
		};

	/**
	 * Creates an adapter for the <code>target</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param target the object to adapt.
	 * @return the adapter for the <code>target</code>.
	 * @generated
	 */
	@Override
	public Adapter createAdapter(Notifier target) {
		return modelSwitch.doSwitch((EObject)target);
	}


	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Identified <em>Identified</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Identified
	 * @generated
	 */
	public Adapter createIdentifiedAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Named <em>Named</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Named
	 * @generated
	 */
	public Adapter createNamedAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.MadeFile <em>Made File</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.MadeFile
	 * @generated
	 */
	public Adapter createMadeFileAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Studio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Studio
	 * @generated
	 */
	public Adapter createStudioAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.JoinedCommission <em>Joined Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.JoinedCommission
	 * @generated
	 */
	public Adapter createJoinedCommissionAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.PaperSize <em>Paper Size</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.PaperSize
	 * @generated
	 */
	public Adapter createPaperSizeAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Mesh <em>Mesh</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Mesh
	 * @generated
	 */
	public Adapter createMeshAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.ScreenFrame <em>Screen Frame</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.ScreenFrame
	 * @generated
	 */
	public Adapter createScreenFrameAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Paint <em>Paint</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Paint
	 * @generated
	 */
	public Adapter createPaintAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.PaintLot <em>Paint Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.PaintLot
	 * @generated
	 */
	public Adapter createPaintLotAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Medium <em>Medium</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Medium
	 * @generated
	 */
	public Adapter createMediumAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.GlassStock <em>Glass Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.GlassStock
	 * @generated
	 */
	public Adapter createGlassStockAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.StockSheet <em>Stock Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.StockSheet
	 * @generated
	 */
	public Adapter createStockSheetAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.GlassFlaw <em>Glass Flaw</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.GlassFlaw
	 * @generated
	 */
	public Adapter createGlassFlawAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.JoinStock <em>Join Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.JoinStock
	 * @generated
	 */
	public Adapter createJoinStockAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.SolderStock <em>Solder Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.SolderStock
	 * @generated
	 */
	public Adapter createSolderStockAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.BarStock <em>Bar Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.BarStock
	 * @generated
	 */
	public Adapter createBarStockAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Kiln <em>Kiln</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Kiln
	 * @generated
	 */
	public Adapter createKilnAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.FiringSchedule <em>Firing Schedule</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.FiringSchedule
	 * @generated
	 */
	public Adapter createFiringScheduleAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.FiringSegment <em>Firing Segment</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.FiringSegment
	 * @generated
	 */
	public Adapter createFiringSegmentAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.PriceBook <em>Price Book</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.PriceBook
	 * @generated
	 */
	public Adapter createPriceBookAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.PriceItem <em>Price Item</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.PriceItem
	 * @generated
	 */
	public Adapter createPriceItemAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Printer <em>Printer</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Printer
	 * @generated
	 */
	public Adapter createPrinterAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.SheetStock <em>Sheet Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.SheetStock
	 * @generated
	 */
	public Adapter createSheetStockAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.ToneCalibration <em>Tone Calibration</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.ToneCalibration
	 * @generated
	 */
	public Adapter createToneCalibrationAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.TonePoint <em>Tone Point</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.TonePoint
	 * @generated
	 */
	public Adapter createTonePointAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.ProcessSetting <em>Process Setting</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.ProcessSetting
	 * @generated
	 */
	public Adapter createProcessSettingAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Person <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Person
	 * @generated
	 */
	public Adapter createPersonAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Supplier <em>Supplier</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Supplier
	 * @generated
	 */
	public Adapter createSupplierAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Commission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Commission
	 * @generated
	 */
	public Adapter createCommissionAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Client <em>Client</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Client
	 * @generated
	 */
	public Adapter createClientAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Site <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Site
	 * @generated
	 */
	public Adapter createSiteAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Milestone <em>Milestone</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Milestone
	 * @generated
	 */
	public Adapter createMilestoneAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Quote <em>Quote</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Quote
	 * @generated
	 */
	public Adapter createQuoteAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.QuoteLine <em>Quote Line</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.QuoteLine
	 * @generated
	 */
	public Adapter createQuoteLineAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Approval <em>Approval</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Approval
	 * @generated
	 */
	public Adapter createApprovalAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Sheet <em>Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Sheet
	 * @generated
	 */
	public Adapter createSheetAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Placement <em>Placement</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Placement
	 * @generated
	 */
	public Adapter createPlacementAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Window <em>Window</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Window
	 * @generated
	 */
	public Adapter createWindowAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Opening <em>Opening</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Opening
	 * @generated
	 */
	public Adapter createOpeningAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Colourway <em>Colourway</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Colourway
	 * @generated
	 */
	public Adapter createColourwayAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.GlassChoice <em>Glass Choice</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.GlassChoice
	 * @generated
	 */
	public Adapter createGlassChoiceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Panel <em>Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Panel
	 * @generated
	 */
	public Adapter createPanelAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.ArtworkReference <em>Artwork Reference</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.ArtworkReference
	 * @generated
	 */
	public Adapter createArtworkReferenceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.RoleAssignment <em>Role Assignment</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.RoleAssignment
	 * @generated
	 */
	public Adapter createRoleAssignmentAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Piece <em>Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Piece
	 * @generated
	 */
	public Adapter createPieceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.AcceptedMend <em>Accepted Mend</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.AcceptedMend
	 * @generated
	 */
	public Adapter createAcceptedMendAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.JoinRule <em>Join Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.JoinRule
	 * @generated
	 */
	public Adapter createJoinRuleAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.DesignLayer <em>Design Layer</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.DesignLayer
	 * @generated
	 */
	public Adapter createDesignLayerAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.StencilRecipe <em>Stencil Recipe</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.StencilRecipe
	 * @generated
	 */
	public Adapter createStencilRecipeAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.MendedPlace <em>Mended Place</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.MendedPlace
	 * @generated
	 */
	public Adapter createMendedPlaceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Stencil <em>Stencil</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Stencil
	 * @generated
	 */
	public Adapter createStencilAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.StencilPiece <em>Stencil Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.StencilPiece
	 * @generated
	 */
	public Adapter createStencilPieceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link java.util.Map.Entry <em>Setting</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see java.util.Map.Entry
	 * @generated
	 */
	public Adapter createSettingAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.MakingRecord <em>Making Record</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.MakingRecord
	 * @generated
	 */
	public Adapter createMakingRecordAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.ArtworkBrought <em>Artwork Brought</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.ArtworkBrought
	 * @generated
	 */
	public Adapter createArtworkBroughtAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.PiecesMade <em>Pieces Made</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.PiecesMade
	 * @generated
	 */
	public Adapter createPiecesMadeAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.StencilMade <em>Stencil Made</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.StencilMade
	 * @generated
	 */
	public Adapter createStencilMadeAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.SheetMade <em>Sheet Made</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.SheetMade
	 * @generated
	 */
	public Adapter createSheetMadeAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.DocumentMade <em>Document Made</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.DocumentMade
	 * @generated
	 */
	public Adapter createDocumentMadeAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.ScreenLoad <em>Screen Load</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.ScreenLoad
	 * @generated
	 */
	public Adapter createScreenLoadAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Reclaim <em>Reclaim</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Reclaim
	 * @generated
	 */
	public Adapter createReclaimAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.PaintMix <em>Paint Mix</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.PaintMix
	 * @generated
	 */
	public Adapter createPaintMixAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.PrintRun <em>Print Run</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.PrintRun
	 * @generated
	 */
	public Adapter createPrintRunAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Firing <em>Firing</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Firing
	 * @generated
	 */
	public Adapter createFiringAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.RunSegment <em>Run Segment</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.RunSegment
	 * @generated
	 */
	public Adapter createRunSegmentAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.ShelfPlace <em>Shelf Place</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.ShelfPlace
	 * @generated
	 */
	public Adapter createShelfPlaceAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Glazing <em>Glazing</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Glazing
	 * @generated
	 */
	public Adapter createGlazingAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Fixing <em>Fixing</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Fixing
	 * @generated
	 */
	public Adapter createFixingAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Defect <em>Defect</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Defect
	 * @generated
	 */
	public Adapter createDefectAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Remake <em>Remake</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Remake
	 * @generated
	 */
	public Adapter createRemakeAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Note <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Note
	 * @generated
	 */
	public Adapter createNoteAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.CostLine <em>Cost Line</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.CostLine
	 * @generated
	 */
	public Adapter createCostLineAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.StockMove <em>Stock Move</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.StockMove
	 * @generated
	 */
	public Adapter createStockMoveAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.Approved <em>Approved</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.Approved
	 * @generated
	 */
	public Adapter createApprovedAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link saddlebar.model.commission.OtherRecord <em>Other Record</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see saddlebar.model.commission.OtherRecord
	 * @generated
	 */
	public Adapter createOtherRecordAdapter() {
		return null;
	}

	/**
	 * Creates a new adapter for the default case.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @generated
	 */
	public Adapter createEObjectAdapter() {
		return null;
	}

} //CommissionAdapterFactory
