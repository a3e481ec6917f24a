/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.time.Instant;
import java.time.LocalDate;

import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import saddlebar.model.art.OutlineMm;

import saddlebar.model.commission.AcceptedMend;
import saddlebar.model.commission.Approval;
import saddlebar.model.commission.Approved;
import saddlebar.model.commission.ArtworkBrought;
import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.BarStock;
import saddlebar.model.commission.Client;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.CostLine;
import saddlebar.model.commission.Defect;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Disposition;
import saddlebar.model.commission.DocumentMade;
import saddlebar.model.commission.EndRule;
import saddlebar.model.commission.Face;
import saddlebar.model.commission.Firing;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.FiringSegment;
import saddlebar.model.commission.Fixing;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.GlassFlaw;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Glazing;
import saddlebar.model.commission.Identified;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.JoinRule;
import saddlebar.model.commission.JoinStock;
import saddlebar.model.commission.JoinedCommission;
import saddlebar.model.commission.Kiln;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.MadeFile;
import saddlebar.model.commission.MakingRecord;
import saddlebar.model.commission.MakingState;
import saddlebar.model.commission.Medium;
import saddlebar.model.commission.MediumBase;
import saddlebar.model.commission.MendKind;
import saddlebar.model.commission.MendedPlace;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Milestone;
import saddlebar.model.commission.MirrorRule;
import saddlebar.model.commission.Named;
import saddlebar.model.commission.Note;
import saddlebar.model.commission.Opening;
import saddlebar.model.commission.OpeningKind;
import saddlebar.model.commission.OtherRecord;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.PaintKind;
import saddlebar.model.commission.PaintLot;
import saddlebar.model.commission.PaintMix;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.PaperSize;
import saddlebar.model.commission.Person;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.PiecesMade;
import saddlebar.model.commission.Placement;
import saddlebar.model.commission.PriceBook;
import saddlebar.model.commission.PriceItem;
import saddlebar.model.commission.PrintRun;
import saddlebar.model.commission.Printer;
import saddlebar.model.commission.ProcessSetting;
import saddlebar.model.commission.Quote;
import saddlebar.model.commission.QuoteLine;
import saddlebar.model.commission.QuoteState;
import saddlebar.model.commission.Reclaim;
import saddlebar.model.commission.Remake;
import saddlebar.model.commission.RoleAssignment;
import saddlebar.model.commission.RunSegment;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.ScreenLoad;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.SheetMade;
import saddlebar.model.commission.SheetMaterial;
import saddlebar.model.commission.SheetStock;
import saddlebar.model.commission.ShelfPlace;
import saddlebar.model.commission.SightLineRule;
import saddlebar.model.commission.Site;
import saddlebar.model.commission.SolderStock;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilMade;
import saddlebar.model.commission.StencilPiece;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.commission.StockMove;
import saddlebar.model.commission.StockSheet;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Supplier;
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.commission.ToneMode;
import saddlebar.model.commission.TonePoint;
import saddlebar.model.commission.TonerSide;
import saddlebar.model.commission.UnitSystem;
import saddlebar.model.commission.Window;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class CommissionPackageImpl extends EPackageImpl implements CommissionPackage {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass identifiedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass namedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass madeFileEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass studioEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass joinedCommissionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass paperSizeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass meshEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass screenFrameEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass paintEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass paintLotEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass mediumEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass glassStockEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass joinStockEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass solderStockEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass barStockEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass kilnEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass firingScheduleEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass firingSegmentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass priceBookEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass priceItemEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass printerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sheetStockEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass toneCalibrationEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass tonePointEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass processSettingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass personEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass supplierEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass commissionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass clientEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass siteEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass milestoneEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass quoteEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass quoteLineEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass approvalEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sheetEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass placementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass windowEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass openingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass colourwayEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass glassChoiceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass panelEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass artworkReferenceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass roleAssignmentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pieceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass designLayerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stencilRecipeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass mendedPlaceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass acceptedMendEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass joinRuleEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stencilEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stencilPieceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass settingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass makingRecordEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass artworkBroughtEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass piecesMadeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stencilMadeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sheetMadeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass documentMadeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass screenLoadEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass reclaimEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass paintMixEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass printRunEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass firingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass runSegmentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass shelfPlaceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass glazingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass fixingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass defectEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass remakeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass noteEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass costLineEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stockMoveEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass approvedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass otherRecordEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stockSheetEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass glassFlawEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum unitSystemEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum layerRoleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum faceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum makingStateEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum joinKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum openingKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum paintKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum mediumBaseEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum sheetMaterialEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum tonerSideEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum sightLineRuleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum toneModeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum mirrorRuleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum endRuleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum mendKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum quoteStateEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum dispositionEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType momentEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType dayEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType outlineEDataType = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see saddlebar.model.commission.CommissionPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private CommissionPackageImpl() {
		super(eNS_URI, CommissionFactory.eINSTANCE);
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link CommissionPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static CommissionPackage init() {
		if (isInited) return (CommissionPackage)EPackage.Registry.INSTANCE.getEPackage(CommissionPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredCommissionPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		CommissionPackageImpl theCommissionPackage = registeredCommissionPackage instanceof CommissionPackageImpl ? (CommissionPackageImpl)registeredCommissionPackage : new CommissionPackageImpl();

		isInited = true;

		// Create package meta-data objects
		theCommissionPackage.createPackageContents();

		// Initialize created meta-data
		theCommissionPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theCommissionPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(CommissionPackage.eNS_URI, theCommissionPackage);
		return theCommissionPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getIdentified() {
		return identifiedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getIdentified_Id() {
		return (EAttribute)identifiedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getNamed() {
		return namedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNamed_Name() {
		return (EAttribute)namedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNamed_Note() {
		return (EAttribute)namedEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMadeFile() {
		return madeFileEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMadeFile_What() {
		return (EAttribute)madeFileEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMadeFile_File() {
		return (EAttribute)madeFileEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMadeFile_Sha256() {
		return (EAttribute)madeFileEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStudio() {
		return studioEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStudio_FormatVersion() {
		return (EAttribute)studioEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStudio_Units() {
		return (EAttribute)studioEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStudio_Currency() {
		return (EAttribute)studioEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Papers() {
		return (EReference)studioEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Meshes() {
		return (EReference)studioEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Frames() {
		return (EReference)studioEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Paints() {
		return (EReference)studioEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Media() {
		return (EReference)studioEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Glass() {
		return (EReference)studioEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Joins() {
		return (EReference)studioEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Solders() {
		return (EReference)studioEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Bars() {
		return (EReference)studioEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Kilns() {
		return (EReference)studioEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Schedules() {
		return (EReference)studioEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_PriceBook() {
		return (EReference)studioEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Printers() {
		return (EReference)studioEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_SheetStock() {
		return (EReference)studioEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Calibrations() {
		return (EReference)studioEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Processes() {
		return (EReference)studioEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_People() {
		return (EReference)studioEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Suppliers() {
		return (EReference)studioEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStudio_Commissions() {
		return (EReference)studioEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStudio_Address() {
		return (EAttribute)studioEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStudio_Contact() {
		return (EAttribute)studioEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStudio_MarkFile() {
		return (EAttribute)studioEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStudio_Accent() {
		return (EAttribute)studioEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStudio_Terms() {
		return (EAttribute)studioEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getJoinedCommission() {
		return joinedCommissionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getJoinedCommission_Studio() {
		return (EReference)joinedCommissionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinedCommission_Folder() {
		return (EAttribute)joinedCommissionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinedCommission_CommissionId() {
		return (EAttribute)joinedCommissionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinedCommission_Joined() {
		return (EAttribute)joinedCommissionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPaperSize() {
		return paperSizeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPaperSize_Studio() {
		return (EReference)paperSizeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaperSize_WidthMm() {
		return (EAttribute)paperSizeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaperSize_HeightMm() {
		return (EAttribute)paperSizeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaperSize_InUse() {
		return (EAttribute)paperSizeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaperSize_Source() {
		return (EAttribute)paperSizeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMesh() {
		return meshEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMesh_Studio() {
		return (EReference)meshEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMesh_ThreadsPerInch() {
		return (EAttribute)meshEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMesh_ThreadUm() {
		return (EAttribute)meshEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMesh_Source() {
		return (EAttribute)meshEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMesh_Frames() {
		return (EReference)meshEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMesh_Calibrations() {
		return (EReference)meshEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getScreenFrame() {
		return screenFrameEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getScreenFrame_Studio() {
		return (EReference)screenFrameEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getScreenFrame_Mesh() {
		return (EReference)screenFrameEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreenFrame_ImageWidthMm() {
		return (EAttribute)screenFrameEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreenFrame_ImageHeightMm() {
		return (EAttribute)screenFrameEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreenFrame_SqueegeeMarginMm() {
		return (EAttribute)screenFrameEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreenFrame_MeshTurnDeg() {
		return (EAttribute)screenFrameEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreenFrame_OutOfUse() {
		return (EAttribute)screenFrameEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPaint() {
		return paintEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPaint_Studio() {
		return (EReference)paintEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Family() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Kind() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Colour() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_SolidTransmittance() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_DensityGPerCm3() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_MaturingFromC() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_MaturingToC() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_PowderToMedium() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_ContainsLead() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_ContainsCadmium() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_GoldBearing() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_PricePerKg() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Source() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPaint_Medium() {
		return (EReference)paintEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPaint_Supplier() {
		return (EReference)paintEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPaint_Lots() {
		return (EReference)paintEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaint_Transmittance() {
		return (EAttribute)paintEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPaintLot() {
		return paintLotEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPaintLot_Paint() {
		return (EReference)paintLotEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaintLot_Received() {
		return (EAttribute)paintLotEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaintLot_MassG() {
		return (EAttribute)paintLotEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaintLot_PricePerKg() {
		return (EAttribute)paintLotEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMedium() {
		return mediumEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMedium_Studio() {
		return (EReference)mediumEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMedium_Base() {
		return (EAttribute)mediumEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMedium_DensityGPerCm3() {
		return (EAttribute)mediumEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMedium_PricePerKg() {
		return (EAttribute)mediumEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMedium_Source() {
		return (EAttribute)mediumEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getGlassStock() {
		return glassStockEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGlassStock_Studio() {
		return (EReference)glassStockEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_Family() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_Colour() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_ThicknessMm() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_Textured() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_Grained() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_Opal() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_DensityKgPerM3() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_HeatModel() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_SheetWidthMm() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_SheetHeightMm() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_StockM2() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_PricePerM2() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_Source() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGlassStock_Supplier() {
		return (EReference)glassStockEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_ViscosityA() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_ViscosityBK() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_ViscosityT0C() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_ExpansionPerMillionK() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_MeasuredMm() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_Transmittance() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGlassStock_Sheets() {
		return (EReference)glassStockEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_NarrowMm() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_NeedleDeg() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_InsideCurve() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassStock_InsideRadiusMm() {
		return (EAttribute)glassStockEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getJoinStock() {
		return joinStockEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getJoinStock_Studio() {
		return (EReference)joinStockEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinStock_Kind() {
		return (EAttribute)joinStockEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinStock_ThicknessUm() {
		return (EAttribute)joinStockEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinStock_WidthMm() {
		return (EAttribute)joinStockEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinStock_HeartMm() {
		return (EAttribute)joinStockEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinStock_FaceMm() {
		return (EAttribute)joinStockEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinStock_MassGPerM() {
		return (EAttribute)joinStockEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinStock_PricePerM() {
		return (EAttribute)joinStockEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinStock_Source() {
		return (EAttribute)joinStockEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinStock_SoldLengthMm() {
		return (EAttribute)joinStockEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSolderStock() {
		return solderStockEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSolderStock_Studio() {
		return (EReference)solderStockEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSolderStock_TinShare() {
		return (EAttribute)solderStockEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSolderStock_ContainsLead() {
		return (EAttribute)solderStockEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSolderStock_DensityGPerCm3() {
		return (EAttribute)solderStockEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSolderStock_PricePerKg() {
		return (EAttribute)solderStockEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSolderStock_Source() {
		return (EAttribute)solderStockEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBarStock() {
		return barStockEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getBarStock_Studio() {
		return (EReference)barStockEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBarStock_WidthMm() {
		return (EAttribute)barStockEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBarStock_DepthMm() {
		return (EAttribute)barStockEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBarStock_Round() {
		return (EAttribute)barStockEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBarStock_PricePerM() {
		return (EAttribute)barStockEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBarStock_Source() {
		return (EAttribute)barStockEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBarStock_SoldLengthMm() {
		return (EAttribute)barStockEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getKiln() {
		return kilnEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getKiln_Studio() {
		return (EReference)kilnEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_ShelfWidthMm() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_ShelfDepthMm() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_Shelves() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_MaxC() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_MaxRateKPerH() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_NaturalFallKPerH() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_PowerKw() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_OffsetK() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_Source() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_ChamberJPerK() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_LiningJPerK() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_ToLiningWPerK() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_ToRoomWPerK() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getKiln_LearntFirings() {
		return (EAttribute)kilnEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFiringSchedule() {
		return firingScheduleEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFiringSchedule_Studio() {
		return (EReference)firingScheduleEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiringSchedule_Purpose() {
		return (EAttribute)firingScheduleEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFiringSchedule_Segments() {
		return (EReference)firingScheduleEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiringSchedule_Source() {
		return (EAttribute)firingScheduleEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFiringSegment() {
		return firingSegmentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFiringSegment_Schedule() {
		return (EReference)firingSegmentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiringSegment_Name() {
		return (EAttribute)firingSegmentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiringSegment_RateKPerH() {
		return (EAttribute)firingSegmentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiringSegment_TargetC() {
		return (EAttribute)firingSegmentEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiringSegment_SoakMin() {
		return (EAttribute)firingSegmentEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiringSegment_Vent() {
		return (EAttribute)firingSegmentEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiringSegment_Note() {
		return (EAttribute)firingSegmentEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPriceBook() {
		return priceBookEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPriceBook_Studio() {
		return (EReference)priceBookEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPriceBook_LabourPerHour() {
		return (EAttribute)priceBookEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPriceBook_EnergyPerKwh() {
		return (EAttribute)priceBookEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPriceBook_OverheadShare() {
		return (EAttribute)priceBookEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPriceBook_MarginShare() {
		return (EAttribute)priceBookEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPriceBook_TaxShare() {
		return (EAttribute)priceBookEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPriceBook_Items() {
		return (EReference)priceBookEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPriceItem() {
		return priceItemEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPriceItem_Book() {
		return (EReference)priceItemEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPriceItem_Key() {
		return (EAttribute)priceItemEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPriceItem_Unit() {
		return (EAttribute)priceItemEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPriceItem_Price() {
		return (EAttribute)priceItemEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPriceItem_From() {
		return (EAttribute)priceItemEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPriceItem_Currency() {
		return (EAttribute)priceItemEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPrinter() {
		return printerEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPrinter_Studio() {
		return (EReference)printerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinter_Dpi() {
		return (EAttribute)printerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinter_MarginMm() {
		return (EAttribute)printerEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinter_ScaleX() {
		return (EAttribute)printerEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinter_ScaleY() {
		return (EAttribute)printerEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinter_Source() {
		return (EAttribute)printerEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinter_Skew() {
		return (EAttribute)printerEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinter_Measured() {
		return (EAttribute)printerEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinter_BandPeriodsMm() {
		return (EAttribute)printerEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrinter_SolidTransmittance() {
		return (EAttribute)printerEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSheetStock() {
		return sheetStockEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSheetStock_Studio() {
		return (EReference)sheetStockEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheetStock_Material() {
		return (EAttribute)sheetStockEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheetStock_Paper() {
		return (EAttribute)sheetStockEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheetStock_InStock() {
		return (EAttribute)sheetStockEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheetStock_PricePerSheet() {
		return (EAttribute)sheetStockEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getToneCalibration() {
		return toneCalibrationEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getToneCalibration_Studio() {
		return (EReference)toneCalibrationEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getToneCalibration_Mesh() {
		return (EReference)toneCalibrationEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getToneCalibration_Paint() {
		return (EReference)toneCalibrationEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getToneCalibration_Printer() {
		return (EReference)toneCalibrationEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getToneCalibration_Method() {
		return (EAttribute)toneCalibrationEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getToneCalibration_ProcessKey() {
		return (EAttribute)toneCalibrationEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getToneCalibration_Lpi() {
		return (EAttribute)toneCalibrationEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getToneCalibration_DotMm() {
		return (EAttribute)toneCalibrationEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getToneCalibration_Measured() {
		return (EAttribute)toneCalibrationEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getToneCalibration_ReadingsFile() {
		return (EAttribute)toneCalibrationEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getToneCalibration_Points() {
		return (EReference)toneCalibrationEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getToneCalibration_SupersededBy() {
		return (EReference)toneCalibrationEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getToneCalibration_YuleNielsen() {
		return (EAttribute)toneCalibrationEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTonePoint() {
		return tonePointEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTonePoint_Calibration() {
		return (EReference)tonePointEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTonePoint_Nominal() {
		return (EAttribute)tonePointEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTonePoint_Effective() {
		return (EAttribute)tonePointEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getProcessSetting() {
		return processSettingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getProcessSetting_Studio() {
		return (EReference)processSettingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProcessSetting_ProcessKey() {
		return (EAttribute)processSettingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProcessSetting_TonerSide() {
		return (EAttribute)processSettingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProcessSetting_Confirmed() {
		return (EAttribute)processSettingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProcessSetting_PressC() {
		return (EAttribute)processSettingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProcessSetting_PressMin() {
		return (EAttribute)processSettingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProcessSetting_CoolMin() {
		return (EAttribute)processSettingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProcessSetting_Source() {
		return (EAttribute)processSettingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPerson() {
		return personEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPerson_Studio() {
		return (EReference)personEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPerson_Initials() {
		return (EAttribute)personEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPerson_Role() {
		return (EAttribute)personEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSupplier() {
		return supplierEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSupplier_Studio() {
		return (EReference)supplierEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSupplier_Contact() {
		return (EAttribute)supplierEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSupplier_Paints() {
		return (EReference)supplierEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSupplier_Glass() {
		return (EReference)supplierEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCommission() {
		return commissionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommission_FormatVersion() {
		return (EAttribute)commissionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommission_Title() {
		return (EAttribute)commissionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommission_Number() {
		return (EAttribute)commissionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommission_Note() {
		return (EAttribute)commissionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommission_Units() {
		return (EAttribute)commissionEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommission_Papers() {
		return (EAttribute)commissionEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommission_Join() {
		return (EAttribute)commissionEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommission_GapMm() {
		return (EAttribute)commissionEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCommission_SheetGapMm() {
		return (EAttribute)commissionEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommission_Client() {
		return (EReference)commissionEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommission_Site() {
		return (EReference)commissionEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommission_Milestones() {
		return (EReference)commissionEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommission_Quotes() {
		return (EReference)commissionEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommission_Approvals() {
		return (EReference)commissionEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommission_Sheets() {
		return (EReference)commissionEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommission_Windows() {
		return (EReference)commissionEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCommission_Studio() {
		return (EReference)commissionEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getClient() {
		return clientEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getClient_Commission() {
		return (EReference)clientEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClient_Contact() {
		return (EAttribute)clientEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClient_Address() {
		return (EAttribute)clientEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSite() {
		return siteEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Commission() {
		return (EReference)siteEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Address() {
		return (EAttribute)siteEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Access() {
		return (EAttribute)siteEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_DistanceKm() {
		return (EAttribute)siteEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Trips() {
		return (EAttribute)siteEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMilestone() {
		return milestoneEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMilestone_Commission() {
		return (EReference)milestoneEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMilestone_Due() {
		return (EAttribute)milestoneEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMilestone_Done() {
		return (EAttribute)milestoneEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMilestone_WorkShare() {
		return (EAttribute)milestoneEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMilestone_PayShare() {
		return (EAttribute)milestoneEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getQuote() {
		return quoteEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getQuote_Commission() {
		return (EReference)quoteEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuote_Number() {
		return (EAttribute)quoteEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuote_State() {
		return (EAttribute)quoteEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuote_Dated() {
		return (EAttribute)quoteEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuote_ValidUntil() {
		return (EAttribute)quoteEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuote_Currency() {
		return (EAttribute)quoteEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuote_Total() {
		return (EAttribute)quoteEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getQuote_Lines() {
		return (EReference)quoteEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuote_Changes() {
		return (EAttribute)quoteEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuote_Reason() {
		return (EAttribute)quoteEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getQuoteLine() {
		return quoteLineEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getQuoteLine_Quote() {
		return (EReference)quoteLineEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuoteLine_Text() {
		return (EAttribute)quoteLineEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuoteLine_SourceKey() {
		return (EAttribute)quoteLineEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuoteLine_WindowName() {
		return (EAttribute)quoteLineEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuoteLine_Quantity() {
		return (EAttribute)quoteLineEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuoteLine_Unit() {
		return (EAttribute)quoteLineEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuoteLine_UnitPrice() {
		return (EAttribute)quoteLineEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getQuoteLine_Amount() {
		return (EAttribute)quoteLineEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getApproval() {
		return approvalEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getApproval_Commission() {
		return (EReference)approvalEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproval_On() {
		return (EAttribute)approvalEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproval_By() {
		return (EAttribute)approvalEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getApproval_Quote() {
		return (EReference)approvalEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getApproval_Colourway() {
		return (EReference)approvalEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSheet() {
		return sheetEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSheet_Commission() {
		return (EReference)sheetEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheet_Number() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheet_Paper() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheet_WidthMm() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheet_HeightMm() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheet_MarginMm() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheet_ProcessKey() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheet_TonerSide() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheet_Dpi() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSheet_Placements() {
		return (EReference)sheetEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSheet_Files() {
		return (EReference)sheetEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheet_ContentKey() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPlacement() {
		return placementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPlacement_Sheet() {
		return (EReference)placementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPlacement_Stencil() {
		return (EReference)placementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlacement_XMm() {
		return (EAttribute)placementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlacement_YMm() {
		return (EAttribute)placementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlacement_RotationDeg() {
		return (EAttribute)placementEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWindow() {
		return windowEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWindow_FormatVersion() {
		return (EAttribute)windowEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWindow_Name() {
		return (EAttribute)windowEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWindow_Title() {
		return (EAttribute)windowEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWindow_Note() {
		return (EAttribute)windowEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWindow_Commission() {
		return (EReference)windowEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWindow_Opening() {
		return (EReference)windowEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWindow_Colourways() {
		return (EReference)windowEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWindow_Chosen() {
		return (EReference)windowEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWindow_Panels() {
		return (EReference)windowEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getOpening() {
		return openingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getOpening_Window() {
		return (EReference)openingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Kind() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_SightWidthMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_SightHeightMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_TightWidthMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_TightHeightMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Count() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Overhead() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_InDoor() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_TemplateFile() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Note() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_JambMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_RiseMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_TopMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_RightMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_BottomMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_LeftMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_DiagonalDownMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_DiagonalUpMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_RebateMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_ClearanceMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_Outline() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_BarsMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOpening_DivisionsMm() {
		return (EAttribute)openingEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getColourway() {
		return colourwayEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getColourway_Window() {
		return (EReference)colourwayEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getColourway_Approved() {
		return (EAttribute)colourwayEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getColourway_ApprovedOn() {
		return (EAttribute)colourwayEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getColourway_Choices() {
		return (EReference)colourwayEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getGlassChoice() {
		return glassChoiceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGlassChoice_Colourway() {
		return (EReference)glassChoiceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGlassChoice_Piece() {
		return (EReference)glassChoiceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGlassChoice_Glass() {
		return (EReference)glassChoiceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPanel() {
		return panelEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPanel_Window() {
		return (EReference)panelEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPanel_XMm() {
		return (EAttribute)panelEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPanel_YMm() {
		return (EAttribute)panelEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPanel_Outline() {
		return (EAttribute)panelEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPanel_Join() {
		return (EAttribute)panelEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPanel_GapMm() {
		return (EAttribute)panelEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPanel_JoinStock() {
		return (EReference)panelEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPanel_Artwork() {
		return (EReference)panelEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPanel_Pieces() {
		return (EReference)panelEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPanel_Layers() {
		return (EReference)panelEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPanel_ContentKey() {
		return (EAttribute)panelEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPanel_EdgeAllowanceMm() {
		return (EAttribute)panelEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPanel_OutlineElement() {
		return (EAttribute)panelEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPanel_Mendings() {
		return (EReference)panelEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPanel_JoinRules() {
		return (EReference)panelEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getArtworkReference() {
		return artworkReferenceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getArtworkReference_Panel() {
		return (EReference)artworkReferenceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkReference_File() {
		return (EAttribute)artworkReferenceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkReference_OriginalName() {
		return (EAttribute)artworkReferenceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkReference_Sha256() {
		return (EAttribute)artworkReferenceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkReference_Revision() {
		return (EAttribute)artworkReferenceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkReference_Brought() {
		return (EAttribute)artworkReferenceEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkReference_WidthMm() {
		return (EAttribute)artworkReferenceEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkReference_HeightMm() {
		return (EAttribute)artworkReferenceEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkReference_Scale() {
		return (EAttribute)artworkReferenceEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getArtworkReference_Roles() {
		return (EReference)artworkReferenceEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkReference_Page() {
		return (EAttribute)artworkReferenceEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkReference_RolesConfirmed() {
		return (EAttribute)artworkReferenceEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkReference_GlassLayers() {
		return (EAttribute)artworkReferenceEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkReference_UnusedLayers() {
		return (EAttribute)artworkReferenceEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRoleAssignment() {
		return roleAssignmentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRoleAssignment_Artwork() {
		return (EReference)roleAssignmentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoleAssignment_Role() {
		return (EAttribute)roleAssignmentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoleAssignment_ArtLayer() {
		return (EAttribute)roleAssignmentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPiece() {
		return pieceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPiece_Panel() {
		return (EReference)pieceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_Number() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_Face() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_Net() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_LabelXMm() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_LabelYMm() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_InradiusMm() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_AreaMm2() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_NetAreaMm2() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_PerimeterMm() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_ShapeKey() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_Problems() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPiece_Neighbours() {
		return (EReference)pieceEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPiece_Glass() {
		return (EReference)pieceEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPiece_Choices() {
		return (EReference)pieceEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_State() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_Retired() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_Note() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_Group() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_Locked() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiece_NumberedByHand() {
		return (EAttribute)pieceEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPiece_CameFrom() {
		return (EReference)pieceEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPiece_Became() {
		return (EReference)pieceEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDesignLayer() {
		return designLayerEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDesignLayer_Panel() {
		return (EReference)designLayerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDesignLayer_Role() {
		return (EAttribute)designLayerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDesignLayer_ArtLayer() {
		return (EAttribute)designLayerEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDesignLayer_Face() {
		return (EAttribute)designLayerEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDesignLayer_Paint() {
		return (EReference)designLayerEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDesignLayer_Medium() {
		return (EReference)designLayerEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDesignLayer_Mesh() {
		return (EReference)designLayerEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDesignLayer_Schedule() {
		return (EReference)designLayerEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDesignLayer_FiringOrder() {
		return (EAttribute)designLayerEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDesignLayer_BleedMm() {
		return (EAttribute)designLayerEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDesignLayer_SightLine() {
		return (EAttribute)designLayerEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDesignLayer_SightLineMm() {
		return (EAttribute)designLayerEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDesignLayer_ByHand() {
		return (EAttribute)designLayerEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDesignLayer_Recipe() {
		return (EReference)designLayerEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDesignLayer_Stencils() {
		return (EReference)designLayerEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDesignLayer_State() {
		return (EAttribute)designLayerEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDesignLayer_ContentKey() {
		return (EAttribute)designLayerEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStencilRecipe() {
		return stencilRecipeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStencilRecipe_Layer() {
		return (EReference)stencilRecipeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_Method() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_Dpi() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_Lpi() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_AngleDeg() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_Dot() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_DotMm() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_Filter() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_Seed() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_ToneMode() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_ToneFrom() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_ToneTo() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStencilRecipe_Calibration() {
		return (EReference)stencilRecipeEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_EndLow() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_EndHigh() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_EndRule() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_ProcessKey() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_Mirror() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_OpenMm() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_BridgeMm() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_Course() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_CourseLayer() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_NoiseSide() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_Clump() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_Supercell() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_Curve() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilRecipe_TrapMm() {
		return (EAttribute)stencilRecipeEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStencilRecipe_Mends() {
		return (EReference)stencilRecipeEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMendedPlace() {
		return mendedPlaceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMendedPlace_Recipe() {
		return (EReference)mendedPlaceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMendedPlace_Kind() {
		return (EAttribute)mendedPlaceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMendedPlace_XMm() {
		return (EAttribute)mendedPlaceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMendedPlace_YMm() {
		return (EAttribute)mendedPlaceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMendedPlace_WidthMm() {
		return (EAttribute)mendedPlaceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAcceptedMend() {
		return acceptedMendEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAcceptedMend_Panel() {
		return (EReference)acceptedMendEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcceptedMend_Key() {
		return (EAttribute)acceptedMendEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcceptedMend_Words() {
		return (EAttribute)acceptedMendEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcceptedMend_XMm() {
		return (EAttribute)acceptedMendEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAcceptedMend_YMm() {
		return (EAttribute)acceptedMendEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getJoinRule() {
		return joinRuleEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getJoinRule_Panel() {
		return (EReference)joinRuleEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinRule_ArtLayer() {
		return (EAttribute)joinRuleEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getJoinRule_First() {
		return (EReference)joinRuleEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getJoinRule_Second() {
		return (EReference)joinRuleEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinRule_Join() {
		return (EAttribute)joinRuleEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getJoinRule_JoinStock() {
		return (EReference)joinRuleEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJoinRule_GapMm() {
		return (EAttribute)joinRuleEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStencil() {
		return stencilEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStencil_Layer() {
		return (EReference)stencilEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_Number() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStencil_Frame() {
		return (EReference)stencilEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_WidthMm() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_HeightMm() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_OriginXMm() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_OriginYMm() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_WidthPx() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_HeightPx() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_Prints() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStencil_Pieces() {
		return (EReference)stencilEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStencil_Files() {
		return (EReference)stencilEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_Sha256() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_ContentKey() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_Coverage() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_TooFine() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_BridgesLost() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencil_Retired() {
		return (EAttribute)stencilEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStencilPiece() {
		return stencilPieceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStencilPiece_Stencil() {
		return (EReference)stencilPieceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStencilPiece_Piece() {
		return (EReference)stencilPieceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilPiece_XMm() {
		return (EAttribute)stencilPieceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilPiece_YMm() {
		return (EAttribute)stencilPieceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilPiece_RotationDeg() {
		return (EAttribute)stencilPieceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilPiece_Spot() {
		return (EAttribute)stencilPieceEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilPiece_Prints() {
		return (EAttribute)stencilPieceEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSetting() {
		return settingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSetting_Key() {
		return (EAttribute)settingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSetting_Value() {
		return (EAttribute)settingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMakingRecord() {
		return makingRecordEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakingRecord_Id() {
		return (EAttribute)makingRecordEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakingRecord_Time() {
		return (EAttribute)makingRecordEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakingRecord_Kind() {
		return (EAttribute)makingRecordEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakingRecord_Who() {
		return (EAttribute)makingRecordEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakingRecord_Writer() {
		return (EAttribute)makingRecordEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakingRecord_Used() {
		return (EAttribute)makingRecordEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakingRecord_Made() {
		return (EAttribute)makingRecordEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMakingRecord_Settings() {
		return (EReference)makingRecordEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakingRecord_Supersedes() {
		return (EAttribute)makingRecordEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakingRecord_Note() {
		return (EAttribute)makingRecordEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakingRecord_File() {
		return (EAttribute)makingRecordEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMakingRecord_Line() {
		return (EAttribute)makingRecordEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getArtworkBrought() {
		return artworkBroughtEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkBrought_WindowId() {
		return (EAttribute)artworkBroughtEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkBrought_PanelId() {
		return (EAttribute)artworkBroughtEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkBrought_ArtworkFile() {
		return (EAttribute)artworkBroughtEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkBrought_Sha256() {
		return (EAttribute)artworkBroughtEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkBrought_Revision() {
		return (EAttribute)artworkBroughtEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getArtworkBrought_WidthMm() {
		return (EAttribute)artworkBroughtEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPiecesMade() {
		return piecesMadeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiecesMade_WindowId() {
		return (EAttribute)piecesMadeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiecesMade_PanelId() {
		return (EAttribute)piecesMadeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiecesMade_InputSha256() {
		return (EAttribute)piecesMadeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiecesMade_Sha256() {
		return (EAttribute)piecesMadeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPiecesMade_Pieces() {
		return (EAttribute)piecesMadeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPiecesMade_Files() {
		return (EReference)piecesMadeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStencilMade() {
		return stencilMadeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilMade_WindowId() {
		return (EAttribute)stencilMadeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilMade_LayerId() {
		return (EAttribute)stencilMadeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilMade_StencilId() {
		return (EAttribute)stencilMadeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilMade_PaintId() {
		return (EAttribute)stencilMadeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilMade_PieceIds() {
		return (EAttribute)stencilMadeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilMade_InputSha256() {
		return (EAttribute)stencilMadeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilMade_Sha256() {
		return (EAttribute)stencilMadeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilMade_Coverage() {
		return (EAttribute)stencilMadeEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilMade_TooFine() {
		return (EAttribute)stencilMadeEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilMade_BridgesLost() {
		return (EAttribute)stencilMadeEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilMade_WidthPx() {
		return (EAttribute)stencilMadeEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStencilMade_HeightPx() {
		return (EAttribute)stencilMadeEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStencilMade_Files() {
		return (EReference)stencilMadeEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSheetMade() {
		return sheetMadeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheetMade_SheetId() {
		return (EAttribute)sheetMadeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheetMade_Number() {
		return (EAttribute)sheetMadeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheetMade_StencilIds() {
		return (EAttribute)sheetMadeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheetMade_InputSha256() {
		return (EAttribute)sheetMadeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSheetMade_Sha256() {
		return (EAttribute)sheetMadeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSheetMade_Files() {
		return (EReference)sheetMadeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDocumentMade() {
		return documentMadeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDocumentMade_What() {
		return (EAttribute)documentMadeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDocumentMade_Files() {
		return (EReference)documentMadeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getScreenLoad() {
		return screenLoadEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreenLoad_FrameId() {
		return (EAttribute)screenLoadEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreenLoad_SheetId() {
		return (EAttribute)screenLoadEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreenLoad_StencilIds() {
		return (EAttribute)screenLoadEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreenLoad_ProcessKey() {
		return (EAttribute)screenLoadEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreenLoad_PressC() {
		return (EAttribute)screenLoadEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreenLoad_PressMin() {
		return (EAttribute)screenLoadEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreenLoad_CoolMin() {
		return (EAttribute)screenLoadEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getReclaim() {
		return reclaimEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReclaim_FrameIds() {
		return (EAttribute)reclaimEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReclaim_ScreenLoadIds() {
		return (EAttribute)reclaimEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReclaim_Cleaner() {
		return (EAttribute)reclaimEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPaintMix() {
		return paintMixEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaintMix_Name() {
		return (EAttribute)paintMixEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaintMix_PaintId() {
		return (EAttribute)paintMixEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaintMix_LotId() {
		return (EAttribute)paintMixEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaintMix_MediumId() {
		return (EAttribute)paintMixEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaintMix_PowderG() {
		return (EAttribute)paintMixEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaintMix_MediumG() {
		return (EAttribute)paintMixEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPrintRun() {
		return printRunEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintRun_ScreenLoadId() {
		return (EAttribute)printRunEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintRun_StencilId() {
		return (EAttribute)printRunEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintRun_MixId() {
		return (EAttribute)printRunEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintRun_WindowId() {
		return (EAttribute)printRunEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintRun_LayerId() {
		return (EAttribute)printRunEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintRun_PieceIds() {
		return (EAttribute)printRunEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintRun_Pulls() {
		return (EAttribute)printRunEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintRun_TemperatureC() {
		return (EAttribute)printRunEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintRun_Humidity() {
		return (EAttribute)printRunEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrintRun_Bed() {
		return (EAttribute)printRunEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFiring() {
		return firingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiring_Name() {
		return (EAttribute)firingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiring_KilnId() {
		return (EAttribute)firingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiring_ScheduleId() {
		return (EAttribute)firingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFiring_Segments() {
		return (EReference)firingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFiring_Load() {
		return (EReference)firingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiring_CurveFile() {
		return (EAttribute)firingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiring_CurveSha256() {
		return (EAttribute)firingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiring_PeakC() {
		return (EAttribute)firingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFiring_EnergyKwh() {
		return (EAttribute)firingEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRunSegment() {
		return runSegmentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunSegment_Name() {
		return (EAttribute)runSegmentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunSegment_RateKPerH() {
		return (EAttribute)runSegmentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunSegment_TargetC() {
		return (EAttribute)runSegmentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunSegment_SoakMin() {
		return (EAttribute)runSegmentEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRunSegment_Vent() {
		return (EAttribute)runSegmentEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getShelfPlace() {
		return shelfPlaceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShelfPlace_WindowId() {
		return (EAttribute)shelfPlaceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShelfPlace_PieceId() {
		return (EAttribute)shelfPlaceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShelfPlace_LayerIds() {
		return (EAttribute)shelfPlaceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShelfPlace_Place() {
		return (EAttribute)shelfPlaceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShelfPlace_Shelf() {
		return (EAttribute)shelfPlaceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShelfPlace_XMm() {
		return (EAttribute)shelfPlaceEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShelfPlace_YMm() {
		return (EAttribute)shelfPlaceEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShelfPlace_RotationDeg() {
		return (EAttribute)shelfPlaceEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getGlazing() {
		return glazingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlazing_WindowId() {
		return (EAttribute)glazingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlazing_PanelId() {
		return (EAttribute)glazingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlazing_PieceIds() {
		return (EAttribute)glazingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlazing_Join() {
		return (EAttribute)glazingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlazing_MassKg() {
		return (EAttribute)glazingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFixing() {
		return fixingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixing_WindowId() {
		return (EAttribute)fixingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixing_PanelId() {
		return (EAttribute)fixingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFixing_Place() {
		return (EAttribute)fixingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDefect() {
		return defectEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDefect_WindowId() {
		return (EAttribute)defectEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDefect_PieceId() {
		return (EAttribute)defectEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDefect_LayerId() {
		return (EAttribute)defectEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDefect_DefectKind() {
		return (EAttribute)defectEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDefect_FoundAt() {
		return (EAttribute)defectEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDefect_Severity() {
		return (EAttribute)defectEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDefect_XMm() {
		return (EAttribute)defectEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDefect_YMm() {
		return (EAttribute)defectEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDefect_Photo() {
		return (EAttribute)defectEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDefect_SuspectedCause() {
		return (EAttribute)defectEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDefect_Disposition() {
		return (EAttribute)defectEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRemake() {
		return remakeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemake_WindowId() {
		return (EAttribute)remakeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemake_PieceId() {
		return (EAttribute)remakeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemake_LayerIds() {
		return (EAttribute)remakeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemake_DefectId() {
		return (EAttribute)remakeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemake_Reason() {
		return (EAttribute)remakeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getNote() {
		return noteEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNote_Text() {
		return (EAttribute)noteEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNote_AboutIds() {
		return (EAttribute)noteEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCostLine() {
		return costLineEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostLine_SourceKey() {
		return (EAttribute)costLineEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostLine_What() {
		return (EAttribute)costLineEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostLine_WindowId() {
		return (EAttribute)costLineEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostLine_Estimate() {
		return (EAttribute)costLineEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostLine_Quantity() {
		return (EAttribute)costLineEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostLine_Unit() {
		return (EAttribute)costLineEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostLine_UnitPrice() {
		return (EAttribute)costLineEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostLine_Amount() {
		return (EAttribute)costLineEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostLine_Currency() {
		return (EAttribute)costLineEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStockMove() {
		return stockMoveEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockMove_ItemId() {
		return (EAttribute)stockMoveEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockMove_Quantity() {
		return (EAttribute)stockMoveEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockMove_Unit() {
		return (EAttribute)stockMoveEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockMove_Reason() {
		return (EAttribute)stockMoveEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getApproved() {
		return approvedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproved_ApprovalId() {
		return (EAttribute)approvedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproved_QuoteId() {
		return (EAttribute)approvedEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getApproved_ColourwayId() {
		return (EAttribute)approvedEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getOtherRecord() {
		return otherRecordEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStockSheet() {
		return stockSheetEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStockSheet_Glass() {
		return (EReference)stockSheetEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockSheet_WidthMm() {
		return (EAttribute)stockSheetEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockSheet_HeightMm() {
		return (EAttribute)stockSheetEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockSheet_Outline() {
		return (EAttribute)stockSheetEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockSheet_GrainDeg() {
		return (EAttribute)stockSheetEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockSheet_Offcut() {
		return (EAttribute)stockSheetEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockSheet_CutFrom() {
		return (EAttribute)stockSheetEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockSheet_UsedUp() {
		return (EAttribute)stockSheetEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStockSheet_Flaws() {
		return (EReference)stockSheetEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getGlassFlaw() {
		return glassFlawEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGlassFlaw_Sheet() {
		return (EReference)glassFlawEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassFlaw_Kind() {
		return (EAttribute)glassFlawEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGlassFlaw_Outline() {
		return (EAttribute)glassFlawEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getUnitSystem() {
		return unitSystemEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getLayerRole() {
		return layerRoleEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFace() {
		return faceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getMakingState() {
		return makingStateEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getJoinKind() {
		return joinKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getOpeningKind() {
		return openingKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPaintKind() {
		return paintKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getMediumBase() {
		return mediumBaseEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSheetMaterial() {
		return sheetMaterialEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTonerSide() {
		return tonerSideEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSightLineRule() {
		return sightLineRuleEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getToneMode() {
		return toneModeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getMirrorRule() {
		return mirrorRuleEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getEndRule() {
		return endRuleEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getMendKind() {
		return mendKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getQuoteState() {
		return quoteStateEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getDisposition() {
		return dispositionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getMoment() {
		return momentEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDay() {
		return dayEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getOutline() {
		return outlineEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CommissionFactory getCommissionFactory() {
		return (CommissionFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents() {
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		identifiedEClass = createEClass(IDENTIFIED);
		createEAttribute(identifiedEClass, IDENTIFIED__ID);

		namedEClass = createEClass(NAMED);
		createEAttribute(namedEClass, NAMED__NAME);
		createEAttribute(namedEClass, NAMED__NOTE);

		madeFileEClass = createEClass(MADE_FILE);
		createEAttribute(madeFileEClass, MADE_FILE__WHAT);
		createEAttribute(madeFileEClass, MADE_FILE__FILE);
		createEAttribute(madeFileEClass, MADE_FILE__SHA256);

		studioEClass = createEClass(STUDIO);
		createEAttribute(studioEClass, STUDIO__FORMAT_VERSION);
		createEAttribute(studioEClass, STUDIO__UNITS);
		createEAttribute(studioEClass, STUDIO__CURRENCY);
		createEReference(studioEClass, STUDIO__PAPERS);
		createEReference(studioEClass, STUDIO__MESHES);
		createEReference(studioEClass, STUDIO__FRAMES);
		createEReference(studioEClass, STUDIO__PAINTS);
		createEReference(studioEClass, STUDIO__MEDIA);
		createEReference(studioEClass, STUDIO__GLASS);
		createEReference(studioEClass, STUDIO__JOINS);
		createEReference(studioEClass, STUDIO__SOLDERS);
		createEReference(studioEClass, STUDIO__BARS);
		createEReference(studioEClass, STUDIO__KILNS);
		createEReference(studioEClass, STUDIO__SCHEDULES);
		createEReference(studioEClass, STUDIO__PRICE_BOOK);
		createEReference(studioEClass, STUDIO__PRINTERS);
		createEReference(studioEClass, STUDIO__SHEET_STOCK);
		createEReference(studioEClass, STUDIO__CALIBRATIONS);
		createEReference(studioEClass, STUDIO__PROCESSES);
		createEReference(studioEClass, STUDIO__PEOPLE);
		createEReference(studioEClass, STUDIO__SUPPLIERS);
		createEReference(studioEClass, STUDIO__COMMISSIONS);
		createEAttribute(studioEClass, STUDIO__ADDRESS);
		createEAttribute(studioEClass, STUDIO__CONTACT);
		createEAttribute(studioEClass, STUDIO__MARK_FILE);
		createEAttribute(studioEClass, STUDIO__ACCENT);
		createEAttribute(studioEClass, STUDIO__TERMS);

		joinedCommissionEClass = createEClass(JOINED_COMMISSION);
		createEReference(joinedCommissionEClass, JOINED_COMMISSION__STUDIO);
		createEAttribute(joinedCommissionEClass, JOINED_COMMISSION__FOLDER);
		createEAttribute(joinedCommissionEClass, JOINED_COMMISSION__COMMISSION_ID);
		createEAttribute(joinedCommissionEClass, JOINED_COMMISSION__JOINED);

		paperSizeEClass = createEClass(PAPER_SIZE);
		createEReference(paperSizeEClass, PAPER_SIZE__STUDIO);
		createEAttribute(paperSizeEClass, PAPER_SIZE__WIDTH_MM);
		createEAttribute(paperSizeEClass, PAPER_SIZE__HEIGHT_MM);
		createEAttribute(paperSizeEClass, PAPER_SIZE__IN_USE);
		createEAttribute(paperSizeEClass, PAPER_SIZE__SOURCE);

		meshEClass = createEClass(MESH);
		createEReference(meshEClass, MESH__STUDIO);
		createEAttribute(meshEClass, MESH__THREADS_PER_INCH);
		createEAttribute(meshEClass, MESH__THREAD_UM);
		createEAttribute(meshEClass, MESH__SOURCE);
		createEReference(meshEClass, MESH__FRAMES);
		createEReference(meshEClass, MESH__CALIBRATIONS);

		screenFrameEClass = createEClass(SCREEN_FRAME);
		createEReference(screenFrameEClass, SCREEN_FRAME__STUDIO);
		createEReference(screenFrameEClass, SCREEN_FRAME__MESH);
		createEAttribute(screenFrameEClass, SCREEN_FRAME__IMAGE_WIDTH_MM);
		createEAttribute(screenFrameEClass, SCREEN_FRAME__IMAGE_HEIGHT_MM);
		createEAttribute(screenFrameEClass, SCREEN_FRAME__SQUEEGEE_MARGIN_MM);
		createEAttribute(screenFrameEClass, SCREEN_FRAME__MESH_TURN_DEG);
		createEAttribute(screenFrameEClass, SCREEN_FRAME__OUT_OF_USE);

		paintEClass = createEClass(PAINT);
		createEReference(paintEClass, PAINT__STUDIO);
		createEAttribute(paintEClass, PAINT__FAMILY);
		createEAttribute(paintEClass, PAINT__KIND);
		createEAttribute(paintEClass, PAINT__COLOUR);
		createEAttribute(paintEClass, PAINT__SOLID_TRANSMITTANCE);
		createEAttribute(paintEClass, PAINT__DENSITY_GPER_CM3);
		createEAttribute(paintEClass, PAINT__MATURING_FROM_C);
		createEAttribute(paintEClass, PAINT__MATURING_TO_C);
		createEAttribute(paintEClass, PAINT__POWDER_TO_MEDIUM);
		createEAttribute(paintEClass, PAINT__CONTAINS_LEAD);
		createEAttribute(paintEClass, PAINT__CONTAINS_CADMIUM);
		createEAttribute(paintEClass, PAINT__GOLD_BEARING);
		createEAttribute(paintEClass, PAINT__PRICE_PER_KG);
		createEAttribute(paintEClass, PAINT__SOURCE);
		createEReference(paintEClass, PAINT__MEDIUM);
		createEReference(paintEClass, PAINT__SUPPLIER);
		createEReference(paintEClass, PAINT__LOTS);
		createEAttribute(paintEClass, PAINT__TRANSMITTANCE);

		paintLotEClass = createEClass(PAINT_LOT);
		createEReference(paintLotEClass, PAINT_LOT__PAINT);
		createEAttribute(paintLotEClass, PAINT_LOT__RECEIVED);
		createEAttribute(paintLotEClass, PAINT_LOT__MASS_G);
		createEAttribute(paintLotEClass, PAINT_LOT__PRICE_PER_KG);

		mediumEClass = createEClass(MEDIUM);
		createEReference(mediumEClass, MEDIUM__STUDIO);
		createEAttribute(mediumEClass, MEDIUM__BASE);
		createEAttribute(mediumEClass, MEDIUM__DENSITY_GPER_CM3);
		createEAttribute(mediumEClass, MEDIUM__PRICE_PER_KG);
		createEAttribute(mediumEClass, MEDIUM__SOURCE);

		glassStockEClass = createEClass(GLASS_STOCK);
		createEReference(glassStockEClass, GLASS_STOCK__STUDIO);
		createEAttribute(glassStockEClass, GLASS_STOCK__FAMILY);
		createEAttribute(glassStockEClass, GLASS_STOCK__COLOUR);
		createEAttribute(glassStockEClass, GLASS_STOCK__THICKNESS_MM);
		createEAttribute(glassStockEClass, GLASS_STOCK__TEXTURED);
		createEAttribute(glassStockEClass, GLASS_STOCK__GRAINED);
		createEAttribute(glassStockEClass, GLASS_STOCK__OPAL);
		createEAttribute(glassStockEClass, GLASS_STOCK__DENSITY_KG_PER_M3);
		createEAttribute(glassStockEClass, GLASS_STOCK__HEAT_MODEL);
		createEAttribute(glassStockEClass, GLASS_STOCK__SHEET_WIDTH_MM);
		createEAttribute(glassStockEClass, GLASS_STOCK__SHEET_HEIGHT_MM);
		createEAttribute(glassStockEClass, GLASS_STOCK__STOCK_M2);
		createEAttribute(glassStockEClass, GLASS_STOCK__PRICE_PER_M2);
		createEAttribute(glassStockEClass, GLASS_STOCK__SOURCE);
		createEReference(glassStockEClass, GLASS_STOCK__SUPPLIER);
		createEAttribute(glassStockEClass, GLASS_STOCK__VISCOSITY_A);
		createEAttribute(glassStockEClass, GLASS_STOCK__VISCOSITY_BK);
		createEAttribute(glassStockEClass, GLASS_STOCK__VISCOSITY_T0C);
		createEAttribute(glassStockEClass, GLASS_STOCK__EXPANSION_PER_MILLION_K);
		createEAttribute(glassStockEClass, GLASS_STOCK__MEASURED_MM);
		createEAttribute(glassStockEClass, GLASS_STOCK__TRANSMITTANCE);
		createEReference(glassStockEClass, GLASS_STOCK__SHEETS);
		createEAttribute(glassStockEClass, GLASS_STOCK__NARROW_MM);
		createEAttribute(glassStockEClass, GLASS_STOCK__NEEDLE_DEG);
		createEAttribute(glassStockEClass, GLASS_STOCK__INSIDE_CURVE);
		createEAttribute(glassStockEClass, GLASS_STOCK__INSIDE_RADIUS_MM);

		joinStockEClass = createEClass(JOIN_STOCK);
		createEReference(joinStockEClass, JOIN_STOCK__STUDIO);
		createEAttribute(joinStockEClass, JOIN_STOCK__KIND);
		createEAttribute(joinStockEClass, JOIN_STOCK__THICKNESS_UM);
		createEAttribute(joinStockEClass, JOIN_STOCK__WIDTH_MM);
		createEAttribute(joinStockEClass, JOIN_STOCK__HEART_MM);
		createEAttribute(joinStockEClass, JOIN_STOCK__FACE_MM);
		createEAttribute(joinStockEClass, JOIN_STOCK__MASS_GPER_M);
		createEAttribute(joinStockEClass, JOIN_STOCK__PRICE_PER_M);
		createEAttribute(joinStockEClass, JOIN_STOCK__SOURCE);
		createEAttribute(joinStockEClass, JOIN_STOCK__SOLD_LENGTH_MM);

		solderStockEClass = createEClass(SOLDER_STOCK);
		createEReference(solderStockEClass, SOLDER_STOCK__STUDIO);
		createEAttribute(solderStockEClass, SOLDER_STOCK__TIN_SHARE);
		createEAttribute(solderStockEClass, SOLDER_STOCK__CONTAINS_LEAD);
		createEAttribute(solderStockEClass, SOLDER_STOCK__DENSITY_GPER_CM3);
		createEAttribute(solderStockEClass, SOLDER_STOCK__PRICE_PER_KG);
		createEAttribute(solderStockEClass, SOLDER_STOCK__SOURCE);

		barStockEClass = createEClass(BAR_STOCK);
		createEReference(barStockEClass, BAR_STOCK__STUDIO);
		createEAttribute(barStockEClass, BAR_STOCK__WIDTH_MM);
		createEAttribute(barStockEClass, BAR_STOCK__DEPTH_MM);
		createEAttribute(barStockEClass, BAR_STOCK__ROUND);
		createEAttribute(barStockEClass, BAR_STOCK__PRICE_PER_M);
		createEAttribute(barStockEClass, BAR_STOCK__SOURCE);
		createEAttribute(barStockEClass, BAR_STOCK__SOLD_LENGTH_MM);

		kilnEClass = createEClass(KILN);
		createEReference(kilnEClass, KILN__STUDIO);
		createEAttribute(kilnEClass, KILN__SHELF_WIDTH_MM);
		createEAttribute(kilnEClass, KILN__SHELF_DEPTH_MM);
		createEAttribute(kilnEClass, KILN__SHELVES);
		createEAttribute(kilnEClass, KILN__MAX_C);
		createEAttribute(kilnEClass, KILN__MAX_RATE_KPER_H);
		createEAttribute(kilnEClass, KILN__NATURAL_FALL_KPER_H);
		createEAttribute(kilnEClass, KILN__POWER_KW);
		createEAttribute(kilnEClass, KILN__OFFSET_K);
		createEAttribute(kilnEClass, KILN__SOURCE);
		createEAttribute(kilnEClass, KILN__CHAMBER_JPER_K);
		createEAttribute(kilnEClass, KILN__LINING_JPER_K);
		createEAttribute(kilnEClass, KILN__TO_LINING_WPER_K);
		createEAttribute(kilnEClass, KILN__TO_ROOM_WPER_K);
		createEAttribute(kilnEClass, KILN__LEARNT_FIRINGS);

		firingScheduleEClass = createEClass(FIRING_SCHEDULE);
		createEReference(firingScheduleEClass, FIRING_SCHEDULE__STUDIO);
		createEAttribute(firingScheduleEClass, FIRING_SCHEDULE__PURPOSE);
		createEReference(firingScheduleEClass, FIRING_SCHEDULE__SEGMENTS);
		createEAttribute(firingScheduleEClass, FIRING_SCHEDULE__SOURCE);

		firingSegmentEClass = createEClass(FIRING_SEGMENT);
		createEReference(firingSegmentEClass, FIRING_SEGMENT__SCHEDULE);
		createEAttribute(firingSegmentEClass, FIRING_SEGMENT__NAME);
		createEAttribute(firingSegmentEClass, FIRING_SEGMENT__RATE_KPER_H);
		createEAttribute(firingSegmentEClass, FIRING_SEGMENT__TARGET_C);
		createEAttribute(firingSegmentEClass, FIRING_SEGMENT__SOAK_MIN);
		createEAttribute(firingSegmentEClass, FIRING_SEGMENT__VENT);
		createEAttribute(firingSegmentEClass, FIRING_SEGMENT__NOTE);

		priceBookEClass = createEClass(PRICE_BOOK);
		createEReference(priceBookEClass, PRICE_BOOK__STUDIO);
		createEAttribute(priceBookEClass, PRICE_BOOK__LABOUR_PER_HOUR);
		createEAttribute(priceBookEClass, PRICE_BOOK__ENERGY_PER_KWH);
		createEAttribute(priceBookEClass, PRICE_BOOK__OVERHEAD_SHARE);
		createEAttribute(priceBookEClass, PRICE_BOOK__MARGIN_SHARE);
		createEAttribute(priceBookEClass, PRICE_BOOK__TAX_SHARE);
		createEReference(priceBookEClass, PRICE_BOOK__ITEMS);

		priceItemEClass = createEClass(PRICE_ITEM);
		createEReference(priceItemEClass, PRICE_ITEM__BOOK);
		createEAttribute(priceItemEClass, PRICE_ITEM__KEY);
		createEAttribute(priceItemEClass, PRICE_ITEM__UNIT);
		createEAttribute(priceItemEClass, PRICE_ITEM__PRICE);
		createEAttribute(priceItemEClass, PRICE_ITEM__FROM);
		createEAttribute(priceItemEClass, PRICE_ITEM__CURRENCY);

		printerEClass = createEClass(PRINTER);
		createEReference(printerEClass, PRINTER__STUDIO);
		createEAttribute(printerEClass, PRINTER__DPI);
		createEAttribute(printerEClass, PRINTER__MARGIN_MM);
		createEAttribute(printerEClass, PRINTER__SCALE_X);
		createEAttribute(printerEClass, PRINTER__SCALE_Y);
		createEAttribute(printerEClass, PRINTER__SOURCE);
		createEAttribute(printerEClass, PRINTER__SKEW);
		createEAttribute(printerEClass, PRINTER__MEASURED);
		createEAttribute(printerEClass, PRINTER__BAND_PERIODS_MM);
		createEAttribute(printerEClass, PRINTER__SOLID_TRANSMITTANCE);

		sheetStockEClass = createEClass(SHEET_STOCK);
		createEReference(sheetStockEClass, SHEET_STOCK__STUDIO);
		createEAttribute(sheetStockEClass, SHEET_STOCK__MATERIAL);
		createEAttribute(sheetStockEClass, SHEET_STOCK__PAPER);
		createEAttribute(sheetStockEClass, SHEET_STOCK__IN_STOCK);
		createEAttribute(sheetStockEClass, SHEET_STOCK__PRICE_PER_SHEET);

		toneCalibrationEClass = createEClass(TONE_CALIBRATION);
		createEReference(toneCalibrationEClass, TONE_CALIBRATION__STUDIO);
		createEReference(toneCalibrationEClass, TONE_CALIBRATION__MESH);
		createEReference(toneCalibrationEClass, TONE_CALIBRATION__PAINT);
		createEReference(toneCalibrationEClass, TONE_CALIBRATION__PRINTER);
		createEAttribute(toneCalibrationEClass, TONE_CALIBRATION__METHOD);
		createEAttribute(toneCalibrationEClass, TONE_CALIBRATION__PROCESS_KEY);
		createEAttribute(toneCalibrationEClass, TONE_CALIBRATION__LPI);
		createEAttribute(toneCalibrationEClass, TONE_CALIBRATION__DOT_MM);
		createEAttribute(toneCalibrationEClass, TONE_CALIBRATION__MEASURED);
		createEAttribute(toneCalibrationEClass, TONE_CALIBRATION__READINGS_FILE);
		createEReference(toneCalibrationEClass, TONE_CALIBRATION__POINTS);
		createEReference(toneCalibrationEClass, TONE_CALIBRATION__SUPERSEDED_BY);
		createEAttribute(toneCalibrationEClass, TONE_CALIBRATION__YULE_NIELSEN);

		tonePointEClass = createEClass(TONE_POINT);
		createEReference(tonePointEClass, TONE_POINT__CALIBRATION);
		createEAttribute(tonePointEClass, TONE_POINT__NOMINAL);
		createEAttribute(tonePointEClass, TONE_POINT__EFFECTIVE);

		processSettingEClass = createEClass(PROCESS_SETTING);
		createEReference(processSettingEClass, PROCESS_SETTING__STUDIO);
		createEAttribute(processSettingEClass, PROCESS_SETTING__PROCESS_KEY);
		createEAttribute(processSettingEClass, PROCESS_SETTING__TONER_SIDE);
		createEAttribute(processSettingEClass, PROCESS_SETTING__CONFIRMED);
		createEAttribute(processSettingEClass, PROCESS_SETTING__PRESS_C);
		createEAttribute(processSettingEClass, PROCESS_SETTING__PRESS_MIN);
		createEAttribute(processSettingEClass, PROCESS_SETTING__COOL_MIN);
		createEAttribute(processSettingEClass, PROCESS_SETTING__SOURCE);

		personEClass = createEClass(PERSON);
		createEReference(personEClass, PERSON__STUDIO);
		createEAttribute(personEClass, PERSON__INITIALS);
		createEAttribute(personEClass, PERSON__ROLE);

		supplierEClass = createEClass(SUPPLIER);
		createEReference(supplierEClass, SUPPLIER__STUDIO);
		createEAttribute(supplierEClass, SUPPLIER__CONTACT);
		createEReference(supplierEClass, SUPPLIER__PAINTS);
		createEReference(supplierEClass, SUPPLIER__GLASS);

		commissionEClass = createEClass(COMMISSION);
		createEAttribute(commissionEClass, COMMISSION__FORMAT_VERSION);
		createEAttribute(commissionEClass, COMMISSION__TITLE);
		createEAttribute(commissionEClass, COMMISSION__NUMBER);
		createEAttribute(commissionEClass, COMMISSION__NOTE);
		createEAttribute(commissionEClass, COMMISSION__UNITS);
		createEAttribute(commissionEClass, COMMISSION__PAPERS);
		createEAttribute(commissionEClass, COMMISSION__JOIN);
		createEAttribute(commissionEClass, COMMISSION__GAP_MM);
		createEAttribute(commissionEClass, COMMISSION__SHEET_GAP_MM);
		createEReference(commissionEClass, COMMISSION__CLIENT);
		createEReference(commissionEClass, COMMISSION__SITE);
		createEReference(commissionEClass, COMMISSION__MILESTONES);
		createEReference(commissionEClass, COMMISSION__QUOTES);
		createEReference(commissionEClass, COMMISSION__APPROVALS);
		createEReference(commissionEClass, COMMISSION__SHEETS);
		createEReference(commissionEClass, COMMISSION__WINDOWS);
		createEReference(commissionEClass, COMMISSION__STUDIO);

		clientEClass = createEClass(CLIENT);
		createEReference(clientEClass, CLIENT__COMMISSION);
		createEAttribute(clientEClass, CLIENT__CONTACT);
		createEAttribute(clientEClass, CLIENT__ADDRESS);

		siteEClass = createEClass(SITE);
		createEReference(siteEClass, SITE__COMMISSION);
		createEAttribute(siteEClass, SITE__ADDRESS);
		createEAttribute(siteEClass, SITE__ACCESS);
		createEAttribute(siteEClass, SITE__DISTANCE_KM);
		createEAttribute(siteEClass, SITE__TRIPS);

		milestoneEClass = createEClass(MILESTONE);
		createEReference(milestoneEClass, MILESTONE__COMMISSION);
		createEAttribute(milestoneEClass, MILESTONE__DUE);
		createEAttribute(milestoneEClass, MILESTONE__DONE);
		createEAttribute(milestoneEClass, MILESTONE__WORK_SHARE);
		createEAttribute(milestoneEClass, MILESTONE__PAY_SHARE);

		quoteEClass = createEClass(QUOTE);
		createEReference(quoteEClass, QUOTE__COMMISSION);
		createEAttribute(quoteEClass, QUOTE__NUMBER);
		createEAttribute(quoteEClass, QUOTE__STATE);
		createEAttribute(quoteEClass, QUOTE__DATED);
		createEAttribute(quoteEClass, QUOTE__VALID_UNTIL);
		createEAttribute(quoteEClass, QUOTE__CURRENCY);
		createEAttribute(quoteEClass, QUOTE__TOTAL);
		createEReference(quoteEClass, QUOTE__LINES);
		createEAttribute(quoteEClass, QUOTE__CHANGES);
		createEAttribute(quoteEClass, QUOTE__REASON);

		quoteLineEClass = createEClass(QUOTE_LINE);
		createEReference(quoteLineEClass, QUOTE_LINE__QUOTE);
		createEAttribute(quoteLineEClass, QUOTE_LINE__TEXT);
		createEAttribute(quoteLineEClass, QUOTE_LINE__SOURCE_KEY);
		createEAttribute(quoteLineEClass, QUOTE_LINE__WINDOW_NAME);
		createEAttribute(quoteLineEClass, QUOTE_LINE__QUANTITY);
		createEAttribute(quoteLineEClass, QUOTE_LINE__UNIT);
		createEAttribute(quoteLineEClass, QUOTE_LINE__UNIT_PRICE);
		createEAttribute(quoteLineEClass, QUOTE_LINE__AMOUNT);

		approvalEClass = createEClass(APPROVAL);
		createEReference(approvalEClass, APPROVAL__COMMISSION);
		createEAttribute(approvalEClass, APPROVAL__ON);
		createEAttribute(approvalEClass, APPROVAL__BY);
		createEReference(approvalEClass, APPROVAL__QUOTE);
		createEReference(approvalEClass, APPROVAL__COLOURWAY);

		sheetEClass = createEClass(SHEET);
		createEReference(sheetEClass, SHEET__COMMISSION);
		createEAttribute(sheetEClass, SHEET__NUMBER);
		createEAttribute(sheetEClass, SHEET__PAPER);
		createEAttribute(sheetEClass, SHEET__WIDTH_MM);
		createEAttribute(sheetEClass, SHEET__HEIGHT_MM);
		createEAttribute(sheetEClass, SHEET__MARGIN_MM);
		createEAttribute(sheetEClass, SHEET__PROCESS_KEY);
		createEAttribute(sheetEClass, SHEET__TONER_SIDE);
		createEAttribute(sheetEClass, SHEET__DPI);
		createEReference(sheetEClass, SHEET__PLACEMENTS);
		createEReference(sheetEClass, SHEET__FILES);
		createEAttribute(sheetEClass, SHEET__CONTENT_KEY);

		placementEClass = createEClass(PLACEMENT);
		createEReference(placementEClass, PLACEMENT__SHEET);
		createEReference(placementEClass, PLACEMENT__STENCIL);
		createEAttribute(placementEClass, PLACEMENT__XMM);
		createEAttribute(placementEClass, PLACEMENT__YMM);
		createEAttribute(placementEClass, PLACEMENT__ROTATION_DEG);

		windowEClass = createEClass(WINDOW);
		createEAttribute(windowEClass, WINDOW__FORMAT_VERSION);
		createEAttribute(windowEClass, WINDOW__NAME);
		createEAttribute(windowEClass, WINDOW__TITLE);
		createEAttribute(windowEClass, WINDOW__NOTE);
		createEReference(windowEClass, WINDOW__COMMISSION);
		createEReference(windowEClass, WINDOW__OPENING);
		createEReference(windowEClass, WINDOW__COLOURWAYS);
		createEReference(windowEClass, WINDOW__CHOSEN);
		createEReference(windowEClass, WINDOW__PANELS);

		openingEClass = createEClass(OPENING);
		createEReference(openingEClass, OPENING__WINDOW);
		createEAttribute(openingEClass, OPENING__KIND);
		createEAttribute(openingEClass, OPENING__SIGHT_WIDTH_MM);
		createEAttribute(openingEClass, OPENING__SIGHT_HEIGHT_MM);
		createEAttribute(openingEClass, OPENING__TIGHT_WIDTH_MM);
		createEAttribute(openingEClass, OPENING__TIGHT_HEIGHT_MM);
		createEAttribute(openingEClass, OPENING__COUNT);
		createEAttribute(openingEClass, OPENING__OVERHEAD);
		createEAttribute(openingEClass, OPENING__IN_DOOR);
		createEAttribute(openingEClass, OPENING__TEMPLATE_FILE);
		createEAttribute(openingEClass, OPENING__NOTE);
		createEAttribute(openingEClass, OPENING__JAMB_MM);
		createEAttribute(openingEClass, OPENING__RISE_MM);
		createEAttribute(openingEClass, OPENING__TOP_MM);
		createEAttribute(openingEClass, OPENING__RIGHT_MM);
		createEAttribute(openingEClass, OPENING__BOTTOM_MM);
		createEAttribute(openingEClass, OPENING__LEFT_MM);
		createEAttribute(openingEClass, OPENING__DIAGONAL_DOWN_MM);
		createEAttribute(openingEClass, OPENING__DIAGONAL_UP_MM);
		createEAttribute(openingEClass, OPENING__REBATE_MM);
		createEAttribute(openingEClass, OPENING__CLEARANCE_MM);
		createEAttribute(openingEClass, OPENING__OUTLINE);
		createEAttribute(openingEClass, OPENING__BARS_MM);
		createEAttribute(openingEClass, OPENING__DIVISIONS_MM);

		colourwayEClass = createEClass(COLOURWAY);
		createEReference(colourwayEClass, COLOURWAY__WINDOW);
		createEAttribute(colourwayEClass, COLOURWAY__APPROVED);
		createEAttribute(colourwayEClass, COLOURWAY__APPROVED_ON);
		createEReference(colourwayEClass, COLOURWAY__CHOICES);

		glassChoiceEClass = createEClass(GLASS_CHOICE);
		createEReference(glassChoiceEClass, GLASS_CHOICE__COLOURWAY);
		createEReference(glassChoiceEClass, GLASS_CHOICE__PIECE);
		createEReference(glassChoiceEClass, GLASS_CHOICE__GLASS);

		panelEClass = createEClass(PANEL);
		createEReference(panelEClass, PANEL__WINDOW);
		createEAttribute(panelEClass, PANEL__XMM);
		createEAttribute(panelEClass, PANEL__YMM);
		createEAttribute(panelEClass, PANEL__OUTLINE);
		createEAttribute(panelEClass, PANEL__JOIN);
		createEAttribute(panelEClass, PANEL__GAP_MM);
		createEReference(panelEClass, PANEL__JOIN_STOCK);
		createEReference(panelEClass, PANEL__ARTWORK);
		createEReference(panelEClass, PANEL__PIECES);
		createEReference(panelEClass, PANEL__LAYERS);
		createEAttribute(panelEClass, PANEL__CONTENT_KEY);
		createEAttribute(panelEClass, PANEL__EDGE_ALLOWANCE_MM);
		createEAttribute(panelEClass, PANEL__OUTLINE_ELEMENT);
		createEReference(panelEClass, PANEL__MENDINGS);
		createEReference(panelEClass, PANEL__JOIN_RULES);

		artworkReferenceEClass = createEClass(ARTWORK_REFERENCE);
		createEReference(artworkReferenceEClass, ARTWORK_REFERENCE__PANEL);
		createEAttribute(artworkReferenceEClass, ARTWORK_REFERENCE__FILE);
		createEAttribute(artworkReferenceEClass, ARTWORK_REFERENCE__ORIGINAL_NAME);
		createEAttribute(artworkReferenceEClass, ARTWORK_REFERENCE__SHA256);
		createEAttribute(artworkReferenceEClass, ARTWORK_REFERENCE__REVISION);
		createEAttribute(artworkReferenceEClass, ARTWORK_REFERENCE__BROUGHT);
		createEAttribute(artworkReferenceEClass, ARTWORK_REFERENCE__WIDTH_MM);
		createEAttribute(artworkReferenceEClass, ARTWORK_REFERENCE__HEIGHT_MM);
		createEAttribute(artworkReferenceEClass, ARTWORK_REFERENCE__SCALE);
		createEReference(artworkReferenceEClass, ARTWORK_REFERENCE__ROLES);
		createEAttribute(artworkReferenceEClass, ARTWORK_REFERENCE__PAGE);
		createEAttribute(artworkReferenceEClass, ARTWORK_REFERENCE__ROLES_CONFIRMED);
		createEAttribute(artworkReferenceEClass, ARTWORK_REFERENCE__GLASS_LAYERS);
		createEAttribute(artworkReferenceEClass, ARTWORK_REFERENCE__UNUSED_LAYERS);

		roleAssignmentEClass = createEClass(ROLE_ASSIGNMENT);
		createEReference(roleAssignmentEClass, ROLE_ASSIGNMENT__ARTWORK);
		createEAttribute(roleAssignmentEClass, ROLE_ASSIGNMENT__ROLE);
		createEAttribute(roleAssignmentEClass, ROLE_ASSIGNMENT__ART_LAYER);

		pieceEClass = createEClass(PIECE);
		createEReference(pieceEClass, PIECE__PANEL);
		createEAttribute(pieceEClass, PIECE__NUMBER);
		createEAttribute(pieceEClass, PIECE__FACE);
		createEAttribute(pieceEClass, PIECE__NET);
		createEAttribute(pieceEClass, PIECE__LABEL_XMM);
		createEAttribute(pieceEClass, PIECE__LABEL_YMM);
		createEAttribute(pieceEClass, PIECE__INRADIUS_MM);
		createEAttribute(pieceEClass, PIECE__AREA_MM2);
		createEAttribute(pieceEClass, PIECE__NET_AREA_MM2);
		createEAttribute(pieceEClass, PIECE__PERIMETER_MM);
		createEAttribute(pieceEClass, PIECE__SHAPE_KEY);
		createEAttribute(pieceEClass, PIECE__PROBLEMS);
		createEReference(pieceEClass, PIECE__NEIGHBOURS);
		createEReference(pieceEClass, PIECE__GLASS);
		createEReference(pieceEClass, PIECE__CHOICES);
		createEAttribute(pieceEClass, PIECE__STATE);
		createEAttribute(pieceEClass, PIECE__RETIRED);
		createEAttribute(pieceEClass, PIECE__NOTE);
		createEAttribute(pieceEClass, PIECE__GROUP);
		createEAttribute(pieceEClass, PIECE__LOCKED);
		createEAttribute(pieceEClass, PIECE__NUMBERED_BY_HAND);
		createEReference(pieceEClass, PIECE__CAME_FROM);
		createEReference(pieceEClass, PIECE__BECAME);

		designLayerEClass = createEClass(DESIGN_LAYER);
		createEReference(designLayerEClass, DESIGN_LAYER__PANEL);
		createEAttribute(designLayerEClass, DESIGN_LAYER__ROLE);
		createEAttribute(designLayerEClass, DESIGN_LAYER__ART_LAYER);
		createEAttribute(designLayerEClass, DESIGN_LAYER__FACE);
		createEReference(designLayerEClass, DESIGN_LAYER__PAINT);
		createEReference(designLayerEClass, DESIGN_LAYER__MEDIUM);
		createEReference(designLayerEClass, DESIGN_LAYER__MESH);
		createEReference(designLayerEClass, DESIGN_LAYER__SCHEDULE);
		createEAttribute(designLayerEClass, DESIGN_LAYER__FIRING_ORDER);
		createEAttribute(designLayerEClass, DESIGN_LAYER__BLEED_MM);
		createEAttribute(designLayerEClass, DESIGN_LAYER__SIGHT_LINE);
		createEAttribute(designLayerEClass, DESIGN_LAYER__SIGHT_LINE_MM);
		createEAttribute(designLayerEClass, DESIGN_LAYER__BY_HAND);
		createEReference(designLayerEClass, DESIGN_LAYER__RECIPE);
		createEReference(designLayerEClass, DESIGN_LAYER__STENCILS);
		createEAttribute(designLayerEClass, DESIGN_LAYER__STATE);
		createEAttribute(designLayerEClass, DESIGN_LAYER__CONTENT_KEY);

		stencilRecipeEClass = createEClass(STENCIL_RECIPE);
		createEReference(stencilRecipeEClass, STENCIL_RECIPE__LAYER);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__METHOD);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__DPI);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__LPI);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__ANGLE_DEG);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__DOT);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__DOT_MM);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__FILTER);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__SEED);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__TONE_MODE);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__TONE_FROM);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__TONE_TO);
		createEReference(stencilRecipeEClass, STENCIL_RECIPE__CALIBRATION);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__END_LOW);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__END_HIGH);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__END_RULE);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__PROCESS_KEY);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__MIRROR);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__OPEN_MM);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__BRIDGE_MM);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__COURSE);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__COURSE_LAYER);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__NOISE_SIDE);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__CLUMP);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__SUPERCELL);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__CURVE);
		createEAttribute(stencilRecipeEClass, STENCIL_RECIPE__TRAP_MM);
		createEReference(stencilRecipeEClass, STENCIL_RECIPE__MENDS);

		stencilEClass = createEClass(STENCIL);
		createEReference(stencilEClass, STENCIL__LAYER);
		createEAttribute(stencilEClass, STENCIL__NUMBER);
		createEReference(stencilEClass, STENCIL__FRAME);
		createEAttribute(stencilEClass, STENCIL__WIDTH_MM);
		createEAttribute(stencilEClass, STENCIL__HEIGHT_MM);
		createEAttribute(stencilEClass, STENCIL__ORIGIN_XMM);
		createEAttribute(stencilEClass, STENCIL__ORIGIN_YMM);
		createEAttribute(stencilEClass, STENCIL__WIDTH_PX);
		createEAttribute(stencilEClass, STENCIL__HEIGHT_PX);
		createEAttribute(stencilEClass, STENCIL__PRINTS);
		createEReference(stencilEClass, STENCIL__PIECES);
		createEReference(stencilEClass, STENCIL__FILES);
		createEAttribute(stencilEClass, STENCIL__SHA256);
		createEAttribute(stencilEClass, STENCIL__CONTENT_KEY);
		createEAttribute(stencilEClass, STENCIL__COVERAGE);
		createEAttribute(stencilEClass, STENCIL__TOO_FINE);
		createEAttribute(stencilEClass, STENCIL__BRIDGES_LOST);
		createEAttribute(stencilEClass, STENCIL__RETIRED);

		stencilPieceEClass = createEClass(STENCIL_PIECE);
		createEReference(stencilPieceEClass, STENCIL_PIECE__STENCIL);
		createEReference(stencilPieceEClass, STENCIL_PIECE__PIECE);
		createEAttribute(stencilPieceEClass, STENCIL_PIECE__XMM);
		createEAttribute(stencilPieceEClass, STENCIL_PIECE__YMM);
		createEAttribute(stencilPieceEClass, STENCIL_PIECE__ROTATION_DEG);
		createEAttribute(stencilPieceEClass, STENCIL_PIECE__SPOT);
		createEAttribute(stencilPieceEClass, STENCIL_PIECE__PRINTS);

		settingEClass = createEClass(SETTING);
		createEAttribute(settingEClass, SETTING__KEY);
		createEAttribute(settingEClass, SETTING__VALUE);

		makingRecordEClass = createEClass(MAKING_RECORD);
		createEAttribute(makingRecordEClass, MAKING_RECORD__ID);
		createEAttribute(makingRecordEClass, MAKING_RECORD__TIME);
		createEAttribute(makingRecordEClass, MAKING_RECORD__KIND);
		createEAttribute(makingRecordEClass, MAKING_RECORD__WHO);
		createEAttribute(makingRecordEClass, MAKING_RECORD__WRITER);
		createEAttribute(makingRecordEClass, MAKING_RECORD__USED);
		createEAttribute(makingRecordEClass, MAKING_RECORD__MADE);
		createEReference(makingRecordEClass, MAKING_RECORD__SETTINGS);
		createEAttribute(makingRecordEClass, MAKING_RECORD__SUPERSEDES);
		createEAttribute(makingRecordEClass, MAKING_RECORD__NOTE);
		createEAttribute(makingRecordEClass, MAKING_RECORD__FILE);
		createEAttribute(makingRecordEClass, MAKING_RECORD__LINE);

		artworkBroughtEClass = createEClass(ARTWORK_BROUGHT);
		createEAttribute(artworkBroughtEClass, ARTWORK_BROUGHT__WINDOW_ID);
		createEAttribute(artworkBroughtEClass, ARTWORK_BROUGHT__PANEL_ID);
		createEAttribute(artworkBroughtEClass, ARTWORK_BROUGHT__ARTWORK_FILE);
		createEAttribute(artworkBroughtEClass, ARTWORK_BROUGHT__SHA256);
		createEAttribute(artworkBroughtEClass, ARTWORK_BROUGHT__REVISION);
		createEAttribute(artworkBroughtEClass, ARTWORK_BROUGHT__WIDTH_MM);

		piecesMadeEClass = createEClass(PIECES_MADE);
		createEAttribute(piecesMadeEClass, PIECES_MADE__WINDOW_ID);
		createEAttribute(piecesMadeEClass, PIECES_MADE__PANEL_ID);
		createEAttribute(piecesMadeEClass, PIECES_MADE__INPUT_SHA256);
		createEAttribute(piecesMadeEClass, PIECES_MADE__SHA256);
		createEAttribute(piecesMadeEClass, PIECES_MADE__PIECES);
		createEReference(piecesMadeEClass, PIECES_MADE__FILES);

		stencilMadeEClass = createEClass(STENCIL_MADE);
		createEAttribute(stencilMadeEClass, STENCIL_MADE__WINDOW_ID);
		createEAttribute(stencilMadeEClass, STENCIL_MADE__LAYER_ID);
		createEAttribute(stencilMadeEClass, STENCIL_MADE__STENCIL_ID);
		createEAttribute(stencilMadeEClass, STENCIL_MADE__PAINT_ID);
		createEAttribute(stencilMadeEClass, STENCIL_MADE__PIECE_IDS);
		createEAttribute(stencilMadeEClass, STENCIL_MADE__INPUT_SHA256);
		createEAttribute(stencilMadeEClass, STENCIL_MADE__SHA256);
		createEAttribute(stencilMadeEClass, STENCIL_MADE__COVERAGE);
		createEAttribute(stencilMadeEClass, STENCIL_MADE__TOO_FINE);
		createEAttribute(stencilMadeEClass, STENCIL_MADE__BRIDGES_LOST);
		createEAttribute(stencilMadeEClass, STENCIL_MADE__WIDTH_PX);
		createEAttribute(stencilMadeEClass, STENCIL_MADE__HEIGHT_PX);
		createEReference(stencilMadeEClass, STENCIL_MADE__FILES);

		sheetMadeEClass = createEClass(SHEET_MADE);
		createEAttribute(sheetMadeEClass, SHEET_MADE__SHEET_ID);
		createEAttribute(sheetMadeEClass, SHEET_MADE__NUMBER);
		createEAttribute(sheetMadeEClass, SHEET_MADE__STENCIL_IDS);
		createEAttribute(sheetMadeEClass, SHEET_MADE__INPUT_SHA256);
		createEAttribute(sheetMadeEClass, SHEET_MADE__SHA256);
		createEReference(sheetMadeEClass, SHEET_MADE__FILES);

		documentMadeEClass = createEClass(DOCUMENT_MADE);
		createEAttribute(documentMadeEClass, DOCUMENT_MADE__WHAT);
		createEReference(documentMadeEClass, DOCUMENT_MADE__FILES);

		screenLoadEClass = createEClass(SCREEN_LOAD);
		createEAttribute(screenLoadEClass, SCREEN_LOAD__FRAME_ID);
		createEAttribute(screenLoadEClass, SCREEN_LOAD__SHEET_ID);
		createEAttribute(screenLoadEClass, SCREEN_LOAD__STENCIL_IDS);
		createEAttribute(screenLoadEClass, SCREEN_LOAD__PROCESS_KEY);
		createEAttribute(screenLoadEClass, SCREEN_LOAD__PRESS_C);
		createEAttribute(screenLoadEClass, SCREEN_LOAD__PRESS_MIN);
		createEAttribute(screenLoadEClass, SCREEN_LOAD__COOL_MIN);

		reclaimEClass = createEClass(RECLAIM);
		createEAttribute(reclaimEClass, RECLAIM__FRAME_IDS);
		createEAttribute(reclaimEClass, RECLAIM__SCREEN_LOAD_IDS);
		createEAttribute(reclaimEClass, RECLAIM__CLEANER);

		paintMixEClass = createEClass(PAINT_MIX);
		createEAttribute(paintMixEClass, PAINT_MIX__NAME);
		createEAttribute(paintMixEClass, PAINT_MIX__PAINT_ID);
		createEAttribute(paintMixEClass, PAINT_MIX__LOT_ID);
		createEAttribute(paintMixEClass, PAINT_MIX__MEDIUM_ID);
		createEAttribute(paintMixEClass, PAINT_MIX__POWDER_G);
		createEAttribute(paintMixEClass, PAINT_MIX__MEDIUM_G);

		printRunEClass = createEClass(PRINT_RUN);
		createEAttribute(printRunEClass, PRINT_RUN__SCREEN_LOAD_ID);
		createEAttribute(printRunEClass, PRINT_RUN__STENCIL_ID);
		createEAttribute(printRunEClass, PRINT_RUN__MIX_ID);
		createEAttribute(printRunEClass, PRINT_RUN__WINDOW_ID);
		createEAttribute(printRunEClass, PRINT_RUN__LAYER_ID);
		createEAttribute(printRunEClass, PRINT_RUN__PIECE_IDS);
		createEAttribute(printRunEClass, PRINT_RUN__PULLS);
		createEAttribute(printRunEClass, PRINT_RUN__TEMPERATURE_C);
		createEAttribute(printRunEClass, PRINT_RUN__HUMIDITY);
		createEAttribute(printRunEClass, PRINT_RUN__BED);

		firingEClass = createEClass(FIRING);
		createEAttribute(firingEClass, FIRING__NAME);
		createEAttribute(firingEClass, FIRING__KILN_ID);
		createEAttribute(firingEClass, FIRING__SCHEDULE_ID);
		createEReference(firingEClass, FIRING__SEGMENTS);
		createEReference(firingEClass, FIRING__LOAD);
		createEAttribute(firingEClass, FIRING__CURVE_FILE);
		createEAttribute(firingEClass, FIRING__CURVE_SHA256);
		createEAttribute(firingEClass, FIRING__PEAK_C);
		createEAttribute(firingEClass, FIRING__ENERGY_KWH);

		runSegmentEClass = createEClass(RUN_SEGMENT);
		createEAttribute(runSegmentEClass, RUN_SEGMENT__NAME);
		createEAttribute(runSegmentEClass, RUN_SEGMENT__RATE_KPER_H);
		createEAttribute(runSegmentEClass, RUN_SEGMENT__TARGET_C);
		createEAttribute(runSegmentEClass, RUN_SEGMENT__SOAK_MIN);
		createEAttribute(runSegmentEClass, RUN_SEGMENT__VENT);

		shelfPlaceEClass = createEClass(SHELF_PLACE);
		createEAttribute(shelfPlaceEClass, SHELF_PLACE__WINDOW_ID);
		createEAttribute(shelfPlaceEClass, SHELF_PLACE__PIECE_ID);
		createEAttribute(shelfPlaceEClass, SHELF_PLACE__LAYER_IDS);
		createEAttribute(shelfPlaceEClass, SHELF_PLACE__PLACE);
		createEAttribute(shelfPlaceEClass, SHELF_PLACE__SHELF);
		createEAttribute(shelfPlaceEClass, SHELF_PLACE__XMM);
		createEAttribute(shelfPlaceEClass, SHELF_PLACE__YMM);
		createEAttribute(shelfPlaceEClass, SHELF_PLACE__ROTATION_DEG);

		glazingEClass = createEClass(GLAZING);
		createEAttribute(glazingEClass, GLAZING__WINDOW_ID);
		createEAttribute(glazingEClass, GLAZING__PANEL_ID);
		createEAttribute(glazingEClass, GLAZING__PIECE_IDS);
		createEAttribute(glazingEClass, GLAZING__JOIN);
		createEAttribute(glazingEClass, GLAZING__MASS_KG);

		fixingEClass = createEClass(FIXING);
		createEAttribute(fixingEClass, FIXING__WINDOW_ID);
		createEAttribute(fixingEClass, FIXING__PANEL_ID);
		createEAttribute(fixingEClass, FIXING__PLACE);

		defectEClass = createEClass(DEFECT);
		createEAttribute(defectEClass, DEFECT__WINDOW_ID);
		createEAttribute(defectEClass, DEFECT__PIECE_ID);
		createEAttribute(defectEClass, DEFECT__LAYER_ID);
		createEAttribute(defectEClass, DEFECT__DEFECT_KIND);
		createEAttribute(defectEClass, DEFECT__FOUND_AT);
		createEAttribute(defectEClass, DEFECT__SEVERITY);
		createEAttribute(defectEClass, DEFECT__XMM);
		createEAttribute(defectEClass, DEFECT__YMM);
		createEAttribute(defectEClass, DEFECT__PHOTO);
		createEAttribute(defectEClass, DEFECT__SUSPECTED_CAUSE);
		createEAttribute(defectEClass, DEFECT__DISPOSITION);

		remakeEClass = createEClass(REMAKE);
		createEAttribute(remakeEClass, REMAKE__WINDOW_ID);
		createEAttribute(remakeEClass, REMAKE__PIECE_ID);
		createEAttribute(remakeEClass, REMAKE__LAYER_IDS);
		createEAttribute(remakeEClass, REMAKE__DEFECT_ID);
		createEAttribute(remakeEClass, REMAKE__REASON);

		noteEClass = createEClass(NOTE);
		createEAttribute(noteEClass, NOTE__TEXT);
		createEAttribute(noteEClass, NOTE__ABOUT_IDS);

		costLineEClass = createEClass(COST_LINE);
		createEAttribute(costLineEClass, COST_LINE__SOURCE_KEY);
		createEAttribute(costLineEClass, COST_LINE__WHAT);
		createEAttribute(costLineEClass, COST_LINE__WINDOW_ID);
		createEAttribute(costLineEClass, COST_LINE__ESTIMATE);
		createEAttribute(costLineEClass, COST_LINE__QUANTITY);
		createEAttribute(costLineEClass, COST_LINE__UNIT);
		createEAttribute(costLineEClass, COST_LINE__UNIT_PRICE);
		createEAttribute(costLineEClass, COST_LINE__AMOUNT);
		createEAttribute(costLineEClass, COST_LINE__CURRENCY);

		stockMoveEClass = createEClass(STOCK_MOVE);
		createEAttribute(stockMoveEClass, STOCK_MOVE__ITEM_ID);
		createEAttribute(stockMoveEClass, STOCK_MOVE__QUANTITY);
		createEAttribute(stockMoveEClass, STOCK_MOVE__UNIT);
		createEAttribute(stockMoveEClass, STOCK_MOVE__REASON);

		approvedEClass = createEClass(APPROVED);
		createEAttribute(approvedEClass, APPROVED__APPROVAL_ID);
		createEAttribute(approvedEClass, APPROVED__QUOTE_ID);
		createEAttribute(approvedEClass, APPROVED__COLOURWAY_ID);

		otherRecordEClass = createEClass(OTHER_RECORD);

		stockSheetEClass = createEClass(STOCK_SHEET);
		createEReference(stockSheetEClass, STOCK_SHEET__GLASS);
		createEAttribute(stockSheetEClass, STOCK_SHEET__WIDTH_MM);
		createEAttribute(stockSheetEClass, STOCK_SHEET__HEIGHT_MM);
		createEAttribute(stockSheetEClass, STOCK_SHEET__OUTLINE);
		createEAttribute(stockSheetEClass, STOCK_SHEET__GRAIN_DEG);
		createEAttribute(stockSheetEClass, STOCK_SHEET__OFFCUT);
		createEAttribute(stockSheetEClass, STOCK_SHEET__CUT_FROM);
		createEAttribute(stockSheetEClass, STOCK_SHEET__USED_UP);
		createEReference(stockSheetEClass, STOCK_SHEET__FLAWS);

		glassFlawEClass = createEClass(GLASS_FLAW);
		createEReference(glassFlawEClass, GLASS_FLAW__SHEET);
		createEAttribute(glassFlawEClass, GLASS_FLAW__KIND);
		createEAttribute(glassFlawEClass, GLASS_FLAW__OUTLINE);

		mendedPlaceEClass = createEClass(MENDED_PLACE);
		createEReference(mendedPlaceEClass, MENDED_PLACE__RECIPE);
		createEAttribute(mendedPlaceEClass, MENDED_PLACE__KIND);
		createEAttribute(mendedPlaceEClass, MENDED_PLACE__XMM);
		createEAttribute(mendedPlaceEClass, MENDED_PLACE__YMM);
		createEAttribute(mendedPlaceEClass, MENDED_PLACE__WIDTH_MM);

		acceptedMendEClass = createEClass(ACCEPTED_MEND);
		createEReference(acceptedMendEClass, ACCEPTED_MEND__PANEL);
		createEAttribute(acceptedMendEClass, ACCEPTED_MEND__KEY);
		createEAttribute(acceptedMendEClass, ACCEPTED_MEND__WORDS);
		createEAttribute(acceptedMendEClass, ACCEPTED_MEND__XMM);
		createEAttribute(acceptedMendEClass, ACCEPTED_MEND__YMM);

		joinRuleEClass = createEClass(JOIN_RULE);
		createEReference(joinRuleEClass, JOIN_RULE__PANEL);
		createEAttribute(joinRuleEClass, JOIN_RULE__ART_LAYER);
		createEReference(joinRuleEClass, JOIN_RULE__FIRST);
		createEReference(joinRuleEClass, JOIN_RULE__SECOND);
		createEAttribute(joinRuleEClass, JOIN_RULE__JOIN);
		createEReference(joinRuleEClass, JOIN_RULE__JOIN_STOCK);
		createEAttribute(joinRuleEClass, JOIN_RULE__GAP_MM);

		// Create enums
		unitSystemEEnum = createEEnum(UNIT_SYSTEM);
		layerRoleEEnum = createEEnum(LAYER_ROLE);
		faceEEnum = createEEnum(FACE);
		makingStateEEnum = createEEnum(MAKING_STATE);
		joinKindEEnum = createEEnum(JOIN_KIND);
		openingKindEEnum = createEEnum(OPENING_KIND);
		paintKindEEnum = createEEnum(PAINT_KIND);
		mediumBaseEEnum = createEEnum(MEDIUM_BASE);
		sheetMaterialEEnum = createEEnum(SHEET_MATERIAL);
		tonerSideEEnum = createEEnum(TONER_SIDE);
		sightLineRuleEEnum = createEEnum(SIGHT_LINE_RULE);
		toneModeEEnum = createEEnum(TONE_MODE);
		mirrorRuleEEnum = createEEnum(MIRROR_RULE);
		endRuleEEnum = createEEnum(END_RULE);
		quoteStateEEnum = createEEnum(QUOTE_STATE);
		dispositionEEnum = createEEnum(DISPOSITION);
		mendKindEEnum = createEEnum(MEND_KIND);

		// Create data types
		momentEDataType = createEDataType(MOMENT);
		dayEDataType = createEDataType(DAY);
		outlineEDataType = createEDataType(OUTLINE);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents() {
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		namedEClass.getESuperTypes().add(this.getIdentified());
		studioEClass.getESuperTypes().add(this.getNamed());
		joinedCommissionEClass.getESuperTypes().add(this.getNamed());
		paperSizeEClass.getESuperTypes().add(this.getNamed());
		meshEClass.getESuperTypes().add(this.getNamed());
		screenFrameEClass.getESuperTypes().add(this.getNamed());
		paintEClass.getESuperTypes().add(this.getNamed());
		paintLotEClass.getESuperTypes().add(this.getNamed());
		mediumEClass.getESuperTypes().add(this.getNamed());
		glassStockEClass.getESuperTypes().add(this.getNamed());
		joinStockEClass.getESuperTypes().add(this.getNamed());
		solderStockEClass.getESuperTypes().add(this.getNamed());
		barStockEClass.getESuperTypes().add(this.getNamed());
		kilnEClass.getESuperTypes().add(this.getNamed());
		firingScheduleEClass.getESuperTypes().add(this.getNamed());
		priceBookEClass.getESuperTypes().add(this.getIdentified());
		priceItemEClass.getESuperTypes().add(this.getNamed());
		printerEClass.getESuperTypes().add(this.getNamed());
		sheetStockEClass.getESuperTypes().add(this.getNamed());
		toneCalibrationEClass.getESuperTypes().add(this.getNamed());
		processSettingEClass.getESuperTypes().add(this.getNamed());
		personEClass.getESuperTypes().add(this.getNamed());
		supplierEClass.getESuperTypes().add(this.getNamed());
		commissionEClass.getESuperTypes().add(this.getIdentified());
		clientEClass.getESuperTypes().add(this.getNamed());
		siteEClass.getESuperTypes().add(this.getNamed());
		milestoneEClass.getESuperTypes().add(this.getNamed());
		quoteEClass.getESuperTypes().add(this.getNamed());
		approvalEClass.getESuperTypes().add(this.getNamed());
		sheetEClass.getESuperTypes().add(this.getIdentified());
		windowEClass.getESuperTypes().add(this.getIdentified());
		openingEClass.getESuperTypes().add(this.getIdentified());
		colourwayEClass.getESuperTypes().add(this.getNamed());
		panelEClass.getESuperTypes().add(this.getNamed());
		artworkReferenceEClass.getESuperTypes().add(this.getIdentified());
		pieceEClass.getESuperTypes().add(this.getIdentified());
		designLayerEClass.getESuperTypes().add(this.getNamed());
		stencilEClass.getESuperTypes().add(this.getIdentified());
		artworkBroughtEClass.getESuperTypes().add(this.getMakingRecord());
		piecesMadeEClass.getESuperTypes().add(this.getMakingRecord());
		stencilMadeEClass.getESuperTypes().add(this.getMakingRecord());
		sheetMadeEClass.getESuperTypes().add(this.getMakingRecord());
		documentMadeEClass.getESuperTypes().add(this.getMakingRecord());
		screenLoadEClass.getESuperTypes().add(this.getMakingRecord());
		reclaimEClass.getESuperTypes().add(this.getMakingRecord());
		paintMixEClass.getESuperTypes().add(this.getMakingRecord());
		printRunEClass.getESuperTypes().add(this.getMakingRecord());
		firingEClass.getESuperTypes().add(this.getMakingRecord());
		glazingEClass.getESuperTypes().add(this.getMakingRecord());
		fixingEClass.getESuperTypes().add(this.getMakingRecord());
		defectEClass.getESuperTypes().add(this.getMakingRecord());
		remakeEClass.getESuperTypes().add(this.getMakingRecord());
		noteEClass.getESuperTypes().add(this.getMakingRecord());
		costLineEClass.getESuperTypes().add(this.getMakingRecord());
		stockMoveEClass.getESuperTypes().add(this.getMakingRecord());
		approvedEClass.getESuperTypes().add(this.getMakingRecord());
		otherRecordEClass.getESuperTypes().add(this.getMakingRecord());
		stockSheetEClass.getESuperTypes().add(this.getNamed());

		// Initialize classes, features, and operations; add parameters
		initEClass(identifiedEClass, Identified.class, "Identified", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getIdentified_Id(), ecorePackage.getEString(), "id", null, 0, 1, Identified.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(namedEClass, Named.class, "Named", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getNamed_Name(), ecorePackage.getEString(), "name", null, 0, 1, Named.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getNamed_Note(), ecorePackage.getEString(), "note", null, 0, 1, Named.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(madeFileEClass, MadeFile.class, "MadeFile", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMadeFile_What(), ecorePackage.getEString(), "what", null, 0, 1, MadeFile.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMadeFile_File(), ecorePackage.getEString(), "file", null, 0, 1, MadeFile.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMadeFile_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, MadeFile.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(studioEClass, Studio.class, "Studio", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStudio_FormatVersion(), ecorePackage.getEString(), "formatVersion", null, 0, 1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStudio_Units(), this.getUnitSystem(), "units", null, 0, 1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStudio_Currency(), ecorePackage.getEString(), "currency", "EUR", 0, 1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Papers(), this.getPaperSize(), this.getPaperSize_Studio(), "papers", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Meshes(), this.getMesh(), this.getMesh_Studio(), "meshes", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Frames(), this.getScreenFrame(), this.getScreenFrame_Studio(), "frames", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Paints(), this.getPaint(), this.getPaint_Studio(), "paints", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Media(), this.getMedium(), this.getMedium_Studio(), "media", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Glass(), this.getGlassStock(), this.getGlassStock_Studio(), "glass", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Joins(), this.getJoinStock(), this.getJoinStock_Studio(), "joins", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Solders(), this.getSolderStock(), this.getSolderStock_Studio(), "solders", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Bars(), this.getBarStock(), this.getBarStock_Studio(), "bars", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Kilns(), this.getKiln(), this.getKiln_Studio(), "kilns", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Schedules(), this.getFiringSchedule(), this.getFiringSchedule_Studio(), "schedules", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_PriceBook(), this.getPriceBook(), this.getPriceBook_Studio(), "priceBook", null, 0, 1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Printers(), this.getPrinter(), this.getPrinter_Studio(), "printers", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_SheetStock(), this.getSheetStock(), this.getSheetStock_Studio(), "sheetStock", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Calibrations(), this.getToneCalibration(), this.getToneCalibration_Studio(), "calibrations", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Processes(), this.getProcessSetting(), this.getProcessSetting_Studio(), "processes", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_People(), this.getPerson(), this.getPerson_Studio(), "people", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Suppliers(), this.getSupplier(), this.getSupplier_Studio(), "suppliers", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStudio_Commissions(), this.getJoinedCommission(), this.getJoinedCommission_Studio(), "commissions", null, 0, -1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStudio_Address(), ecorePackage.getEString(), "address", null, 0, 1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStudio_Contact(), ecorePackage.getEString(), "contact", null, 0, 1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStudio_MarkFile(), ecorePackage.getEString(), "markFile", null, 0, 1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStudio_Accent(), ecorePackage.getEString(), "accent", "#2f4b5c", 0, 1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStudio_Terms(), ecorePackage.getEString(), "terms", null, 0, 1, Studio.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(joinedCommissionEClass, JoinedCommission.class, "JoinedCommission", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getJoinedCommission_Studio(), this.getStudio(), this.getStudio_Commissions(), "studio", null, 0, 1, JoinedCommission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinedCommission_Folder(), ecorePackage.getEString(), "folder", null, 0, 1, JoinedCommission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinedCommission_CommissionId(), ecorePackage.getEString(), "commissionId", null, 0, 1, JoinedCommission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinedCommission_Joined(), this.getMoment(), "joined", null, 0, 1, JoinedCommission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(paperSizeEClass, PaperSize.class, "PaperSize", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPaperSize_Studio(), this.getStudio(), this.getStudio_Papers(), "studio", null, 0, 1, PaperSize.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaperSize_WidthMm(), ecorePackage.getEDouble(), "widthMm", null, 0, 1, PaperSize.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaperSize_HeightMm(), ecorePackage.getEDouble(), "heightMm", null, 0, 1, PaperSize.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaperSize_InUse(), ecorePackage.getEBoolean(), "inUse", "true", 0, 1, PaperSize.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaperSize_Source(), ecorePackage.getEString(), "source", null, 0, 1, PaperSize.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(meshEClass, Mesh.class, "Mesh", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getMesh_Studio(), this.getStudio(), this.getStudio_Meshes(), "studio", null, 0, 1, Mesh.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMesh_ThreadsPerInch(), ecorePackage.getEDouble(), "threadsPerInch", null, 0, 1, Mesh.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMesh_ThreadUm(), ecorePackage.getEDouble(), "threadUm", null, 0, 1, Mesh.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMesh_Source(), ecorePackage.getEString(), "source", null, 0, 1, Mesh.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMesh_Frames(), this.getScreenFrame(), this.getScreenFrame_Mesh(), "frames", null, 0, -1, Mesh.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMesh_Calibrations(), this.getToneCalibration(), this.getToneCalibration_Mesh(), "calibrations", null, 0, -1, Mesh.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(screenFrameEClass, ScreenFrame.class, "ScreenFrame", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getScreenFrame_Studio(), this.getStudio(), this.getStudio_Frames(), "studio", null, 0, 1, ScreenFrame.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getScreenFrame_Mesh(), this.getMesh(), this.getMesh_Frames(), "mesh", null, 0, 1, ScreenFrame.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreenFrame_ImageWidthMm(), ecorePackage.getEDouble(), "imageWidthMm", null, 0, 1, ScreenFrame.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreenFrame_ImageHeightMm(), ecorePackage.getEDouble(), "imageHeightMm", null, 0, 1, ScreenFrame.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreenFrame_SqueegeeMarginMm(), ecorePackage.getEDouble(), "squeegeeMarginMm", null, 0, 1, ScreenFrame.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreenFrame_MeshTurnDeg(), ecorePackage.getEDouble(), "meshTurnDeg", null, 0, 1, ScreenFrame.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreenFrame_OutOfUse(), ecorePackage.getEBoolean(), "outOfUse", null, 0, 1, ScreenFrame.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(paintEClass, Paint.class, "Paint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPaint_Studio(), this.getStudio(), this.getStudio_Paints(), "studio", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Family(), ecorePackage.getEString(), "family", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Kind(), this.getPaintKind(), "kind", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Colour(), ecorePackage.getEString(), "colour", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_SolidTransmittance(), ecorePackage.getEDoubleObject(), "solidTransmittance", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_DensityGPerCm3(), ecorePackage.getEDouble(), "densityGPerCm3", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_MaturingFromC(), ecorePackage.getEDouble(), "maturingFromC", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_MaturingToC(), ecorePackage.getEDouble(), "maturingToC", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_PowderToMedium(), ecorePackage.getEDouble(), "powderToMedium", "2.5", 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_ContainsLead(), ecorePackage.getEBoolean(), "containsLead", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_ContainsCadmium(), ecorePackage.getEBoolean(), "containsCadmium", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_GoldBearing(), ecorePackage.getEBoolean(), "goldBearing", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_PricePerKg(), ecorePackage.getEBigDecimal(), "pricePerKg", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Source(), ecorePackage.getEString(), "source", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPaint_Medium(), this.getMedium(), null, "medium", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPaint_Supplier(), this.getSupplier(), this.getSupplier_Paints(), "supplier", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPaint_Lots(), this.getPaintLot(), this.getPaintLot_Paint(), "lots", null, 0, -1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaint_Transmittance(), ecorePackage.getEString(), "transmittance", null, 0, 1, Paint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(paintLotEClass, PaintLot.class, "PaintLot", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPaintLot_Paint(), this.getPaint(), this.getPaint_Lots(), "paint", null, 0, 1, PaintLot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaintLot_Received(), this.getDay(), "received", null, 0, 1, PaintLot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaintLot_MassG(), ecorePackage.getEDouble(), "massG", null, 0, 1, PaintLot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaintLot_PricePerKg(), ecorePackage.getEBigDecimal(), "pricePerKg", null, 0, 1, PaintLot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(mediumEClass, Medium.class, "Medium", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getMedium_Studio(), this.getStudio(), this.getStudio_Media(), "studio", null, 0, 1, Medium.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMedium_Base(), this.getMediumBase(), "base", null, 0, 1, Medium.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMedium_DensityGPerCm3(), ecorePackage.getEDouble(), "densityGPerCm3", null, 0, 1, Medium.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMedium_PricePerKg(), ecorePackage.getEBigDecimal(), "pricePerKg", null, 0, 1, Medium.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMedium_Source(), ecorePackage.getEString(), "source", null, 0, 1, Medium.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(glassStockEClass, GlassStock.class, "GlassStock", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getGlassStock_Studio(), this.getStudio(), this.getStudio_Glass(), "studio", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_Family(), ecorePackage.getEString(), "family", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_Colour(), ecorePackage.getEString(), "colour", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_ThicknessMm(), ecorePackage.getEDouble(), "thicknessMm", "3", 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_Textured(), ecorePackage.getEBoolean(), "textured", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_Grained(), ecorePackage.getEBoolean(), "grained", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_Opal(), ecorePackage.getEBoolean(), "opal", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_DensityKgPerM3(), ecorePackage.getEDouble(), "densityKgPerM3", "2500", 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_HeatModel(), ecorePackage.getEString(), "heatModel", "float", 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_SheetWidthMm(), ecorePackage.getEDouble(), "sheetWidthMm", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_SheetHeightMm(), ecorePackage.getEDouble(), "sheetHeightMm", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_StockM2(), ecorePackage.getEDouble(), "stockM2", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_PricePerM2(), ecorePackage.getEBigDecimal(), "pricePerM2", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_Source(), ecorePackage.getEString(), "source", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGlassStock_Supplier(), this.getSupplier(), this.getSupplier_Glass(), "supplier", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_ViscosityA(), ecorePackage.getEDoubleObject(), "viscosityA", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_ViscosityBK(), ecorePackage.getEDoubleObject(), "viscosityBK", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_ViscosityT0C(), ecorePackage.getEDoubleObject(), "viscosityT0C", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_ExpansionPerMillionK(), ecorePackage.getEDoubleObject(), "expansionPerMillionK", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_MeasuredMm(), ecorePackage.getEDoubleObject(), "measuredMm", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_Transmittance(), ecorePackage.getEString(), "transmittance", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGlassStock_Sheets(), this.getStockSheet(), this.getStockSheet_Glass(), "sheets", null, 0, -1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_NarrowMm(), ecorePackage.getEDoubleObject(), "narrowMm", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_NeedleDeg(), ecorePackage.getEDoubleObject(), "needleDeg", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_InsideCurve(), ecorePackage.getEDoubleObject(), "insideCurve", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassStock_InsideRadiusMm(), ecorePackage.getEDoubleObject(), "insideRadiusMm", null, 0, 1, GlassStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(joinStockEClass, JoinStock.class, "JoinStock", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getJoinStock_Studio(), this.getStudio(), this.getStudio_Joins(), "studio", null, 0, 1, JoinStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinStock_Kind(), this.getJoinKind(), "kind", null, 0, 1, JoinStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinStock_ThicknessUm(), ecorePackage.getEDouble(), "thicknessUm", null, 0, 1, JoinStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinStock_WidthMm(), ecorePackage.getEDouble(), "widthMm", null, 0, 1, JoinStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinStock_HeartMm(), ecorePackage.getEDouble(), "heartMm", null, 0, 1, JoinStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinStock_FaceMm(), ecorePackage.getEDouble(), "faceMm", null, 0, 1, JoinStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinStock_MassGPerM(), ecorePackage.getEDouble(), "massGPerM", null, 0, 1, JoinStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinStock_PricePerM(), ecorePackage.getEBigDecimal(), "pricePerM", null, 0, 1, JoinStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinStock_Source(), ecorePackage.getEString(), "source", null, 0, 1, JoinStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinStock_SoldLengthMm(), ecorePackage.getEDoubleObject(), "soldLengthMm", null, 0, 1, JoinStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(solderStockEClass, SolderStock.class, "SolderStock", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getSolderStock_Studio(), this.getStudio(), this.getStudio_Solders(), "studio", null, 0, 1, SolderStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSolderStock_TinShare(), ecorePackage.getEDouble(), "tinShare", null, 0, 1, SolderStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSolderStock_ContainsLead(), ecorePackage.getEBoolean(), "containsLead", "true", 0, 1, SolderStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSolderStock_DensityGPerCm3(), ecorePackage.getEDouble(), "densityGPerCm3", null, 0, 1, SolderStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSolderStock_PricePerKg(), ecorePackage.getEBigDecimal(), "pricePerKg", null, 0, 1, SolderStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSolderStock_Source(), ecorePackage.getEString(), "source", null, 0, 1, SolderStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(barStockEClass, BarStock.class, "BarStock", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getBarStock_Studio(), this.getStudio(), this.getStudio_Bars(), "studio", null, 0, 1, BarStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBarStock_WidthMm(), ecorePackage.getEDouble(), "widthMm", null, 0, 1, BarStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBarStock_DepthMm(), ecorePackage.getEDouble(), "depthMm", null, 0, 1, BarStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBarStock_Round(), ecorePackage.getEBoolean(), "round", null, 0, 1, BarStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBarStock_PricePerM(), ecorePackage.getEBigDecimal(), "pricePerM", null, 0, 1, BarStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBarStock_Source(), ecorePackage.getEString(), "source", null, 0, 1, BarStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBarStock_SoldLengthMm(), ecorePackage.getEDoubleObject(), "soldLengthMm", null, 0, 1, BarStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(kilnEClass, Kiln.class, "Kiln", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getKiln_Studio(), this.getStudio(), this.getStudio_Kilns(), "studio", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_ShelfWidthMm(), ecorePackage.getEDouble(), "shelfWidthMm", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_ShelfDepthMm(), ecorePackage.getEDouble(), "shelfDepthMm", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_Shelves(), ecorePackage.getEInt(), "shelves", "1", 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_MaxC(), ecorePackage.getEDouble(), "maxC", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_MaxRateKPerH(), ecorePackage.getEDouble(), "maxRateKPerH", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_NaturalFallKPerH(), ecorePackage.getEDouble(), "naturalFallKPerH", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_PowerKw(), ecorePackage.getEDouble(), "powerKw", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_OffsetK(), ecorePackage.getEDouble(), "offsetK", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_Source(), ecorePackage.getEString(), "source", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_ChamberJPerK(), ecorePackage.getEDoubleObject(), "chamberJPerK", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_LiningJPerK(), ecorePackage.getEDoubleObject(), "liningJPerK", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_ToLiningWPerK(), ecorePackage.getEDoubleObject(), "toLiningWPerK", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_ToRoomWPerK(), ecorePackage.getEDoubleObject(), "toRoomWPerK", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getKiln_LearntFirings(), ecorePackage.getEInt(), "learntFirings", null, 0, 1, Kiln.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(firingScheduleEClass, FiringSchedule.class, "FiringSchedule", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getFiringSchedule_Studio(), this.getStudio(), this.getStudio_Schedules(), "studio", null, 0, 1, FiringSchedule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiringSchedule_Purpose(), this.getPaintKind(), "purpose", null, 0, 1, FiringSchedule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFiringSchedule_Segments(), this.getFiringSegment(), this.getFiringSegment_Schedule(), "segments", null, 0, -1, FiringSchedule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiringSchedule_Source(), ecorePackage.getEString(), "source", null, 0, 1, FiringSchedule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(firingSegmentEClass, FiringSegment.class, "FiringSegment", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getFiringSegment_Schedule(), this.getFiringSchedule(), this.getFiringSchedule_Segments(), "schedule", null, 0, 1, FiringSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiringSegment_Name(), ecorePackage.getEString(), "name", null, 0, 1, FiringSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiringSegment_RateKPerH(), ecorePackage.getEDoubleObject(), "rateKPerH", null, 0, 1, FiringSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiringSegment_TargetC(), ecorePackage.getEDouble(), "targetC", null, 0, 1, FiringSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiringSegment_SoakMin(), ecorePackage.getEDouble(), "soakMin", null, 0, 1, FiringSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiringSegment_Vent(), ecorePackage.getEBoolean(), "vent", null, 0, 1, FiringSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiringSegment_Note(), ecorePackage.getEString(), "note", null, 0, 1, FiringSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(priceBookEClass, PriceBook.class, "PriceBook", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPriceBook_Studio(), this.getStudio(), this.getStudio_PriceBook(), "studio", null, 0, 1, PriceBook.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPriceBook_LabourPerHour(), ecorePackage.getEBigDecimal(), "labourPerHour", null, 0, 1, PriceBook.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPriceBook_EnergyPerKwh(), ecorePackage.getEBigDecimal(), "energyPerKwh", null, 0, 1, PriceBook.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPriceBook_OverheadShare(), ecorePackage.getEDoubleObject(), "overheadShare", null, 0, 1, PriceBook.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPriceBook_MarginShare(), ecorePackage.getEDoubleObject(), "marginShare", null, 0, 1, PriceBook.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPriceBook_TaxShare(), ecorePackage.getEDoubleObject(), "taxShare", null, 0, 1, PriceBook.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPriceBook_Items(), this.getPriceItem(), this.getPriceItem_Book(), "items", null, 0, -1, PriceBook.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(priceItemEClass, PriceItem.class, "PriceItem", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPriceItem_Book(), this.getPriceBook(), this.getPriceBook_Items(), "book", null, 0, 1, PriceItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPriceItem_Key(), ecorePackage.getEString(), "key", null, 0, 1, PriceItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPriceItem_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, PriceItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPriceItem_Price(), ecorePackage.getEBigDecimal(), "price", null, 0, 1, PriceItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPriceItem_From(), this.getDay(), "from", null, 0, 1, PriceItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPriceItem_Currency(), ecorePackage.getEString(), "currency", null, 0, 1, PriceItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(printerEClass, Printer.class, "Printer", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPrinter_Studio(), this.getStudio(), this.getStudio_Printers(), "studio", null, 0, 1, Printer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinter_Dpi(), ecorePackage.getEInt(), "dpi", "1200", 0, 1, Printer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinter_MarginMm(), ecorePackage.getEDouble(), "marginMm", "4.3", 0, 1, Printer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinter_ScaleX(), ecorePackage.getEDouble(), "scaleX", "1", 0, 1, Printer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinter_ScaleY(), ecorePackage.getEDouble(), "scaleY", "1", 0, 1, Printer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinter_Source(), ecorePackage.getEString(), "source", null, 0, 1, Printer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinter_Skew(), ecorePackage.getEDouble(), "skew", "0", 0, 1, Printer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinter_Measured(), this.getDay(), "measured", null, 0, 1, Printer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinter_BandPeriodsMm(), ecorePackage.getEDouble(), "bandPeriodsMm", null, 0, -1, Printer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrinter_SolidTransmittance(), ecorePackage.getEDoubleObject(), "solidTransmittance", null, 0, 1, Printer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sheetStockEClass, SheetStock.class, "SheetStock", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getSheetStock_Studio(), this.getStudio(), this.getStudio_SheetStock(), "studio", null, 0, 1, SheetStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheetStock_Material(), this.getSheetMaterial(), "material", null, 0, 1, SheetStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheetStock_Paper(), ecorePackage.getEString(), "paper", null, 0, 1, SheetStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheetStock_InStock(), ecorePackage.getEInt(), "inStock", null, 0, 1, SheetStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheetStock_PricePerSheet(), ecorePackage.getEBigDecimal(), "pricePerSheet", null, 0, 1, SheetStock.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(toneCalibrationEClass, ToneCalibration.class, "ToneCalibration", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getToneCalibration_Studio(), this.getStudio(), this.getStudio_Calibrations(), "studio", null, 0, 1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getToneCalibration_Mesh(), this.getMesh(), this.getMesh_Calibrations(), "mesh", null, 0, 1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getToneCalibration_Paint(), this.getPaint(), null, "paint", null, 0, 1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getToneCalibration_Printer(), this.getPrinter(), null, "printer", null, 0, 1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getToneCalibration_Method(), ecorePackage.getEString(), "method", null, 0, 1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getToneCalibration_ProcessKey(), ecorePackage.getEString(), "processKey", null, 0, 1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getToneCalibration_Lpi(), ecorePackage.getEDoubleObject(), "lpi", null, 0, 1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getToneCalibration_DotMm(), ecorePackage.getEDoubleObject(), "dotMm", null, 0, 1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getToneCalibration_Measured(), this.getDay(), "measured", null, 0, 1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getToneCalibration_ReadingsFile(), ecorePackage.getEString(), "readingsFile", null, 0, 1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getToneCalibration_Points(), this.getTonePoint(), this.getTonePoint_Calibration(), "points", null, 0, -1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getToneCalibration_SupersededBy(), this.getToneCalibration(), null, "supersededBy", null, 0, 1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getToneCalibration_YuleNielsen(), ecorePackage.getEDouble(), "yuleNielsen", "1", 0, 1, ToneCalibration.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(tonePointEClass, TonePoint.class, "TonePoint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getTonePoint_Calibration(), this.getToneCalibration(), this.getToneCalibration_Points(), "calibration", null, 0, 1, TonePoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTonePoint_Nominal(), ecorePackage.getEDouble(), "nominal", null, 0, 1, TonePoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTonePoint_Effective(), ecorePackage.getEDouble(), "effective", null, 0, 1, TonePoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(processSettingEClass, ProcessSetting.class, "ProcessSetting", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getProcessSetting_Studio(), this.getStudio(), this.getStudio_Processes(), "studio", null, 0, 1, ProcessSetting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProcessSetting_ProcessKey(), ecorePackage.getEString(), "processKey", null, 0, 1, ProcessSetting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProcessSetting_TonerSide(), this.getTonerSide(), "tonerSide", null, 0, 1, ProcessSetting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProcessSetting_Confirmed(), ecorePackage.getEBoolean(), "confirmed", null, 0, 1, ProcessSetting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProcessSetting_PressC(), ecorePackage.getEDouble(), "pressC", null, 0, 1, ProcessSetting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProcessSetting_PressMin(), ecorePackage.getEDouble(), "pressMin", null, 0, 1, ProcessSetting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProcessSetting_CoolMin(), ecorePackage.getEDouble(), "coolMin", null, 0, 1, ProcessSetting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProcessSetting_Source(), ecorePackage.getEString(), "source", null, 0, 1, ProcessSetting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(personEClass, Person.class, "Person", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPerson_Studio(), this.getStudio(), this.getStudio_People(), "studio", null, 0, 1, Person.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPerson_Initials(), ecorePackage.getEString(), "initials", null, 0, 1, Person.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPerson_Role(), ecorePackage.getEString(), "role", null, 0, 1, Person.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(supplierEClass, Supplier.class, "Supplier", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getSupplier_Studio(), this.getStudio(), this.getStudio_Suppliers(), "studio", null, 0, 1, Supplier.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSupplier_Contact(), ecorePackage.getEString(), "contact", null, 0, 1, Supplier.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSupplier_Paints(), this.getPaint(), this.getPaint_Supplier(), "paints", null, 0, -1, Supplier.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSupplier_Glass(), this.getGlassStock(), this.getGlassStock_Supplier(), "glass", null, 0, -1, Supplier.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(commissionEClass, Commission.class, "Commission", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCommission_FormatVersion(), ecorePackage.getEString(), "formatVersion", null, 0, 1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommission_Title(), ecorePackage.getEString(), "title", null, 0, 1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommission_Number(), ecorePackage.getEString(), "number", null, 0, 1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommission_Note(), ecorePackage.getEString(), "note", null, 0, 1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommission_Units(), this.getUnitSystem(), "units", null, 0, 1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommission_Papers(), ecorePackage.getEString(), "papers", null, 0, -1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommission_Join(), this.getJoinKind(), "join", null, 0, 1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommission_GapMm(), ecorePackage.getEDouble(), "gapMm", "0.8", 0, 1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCommission_SheetGapMm(), ecorePackage.getEDouble(), "sheetGapMm", "5", 0, 1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommission_Client(), this.getClient(), this.getClient_Commission(), "client", null, 0, 1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommission_Site(), this.getSite(), this.getSite_Commission(), "site", null, 0, 1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommission_Milestones(), this.getMilestone(), this.getMilestone_Commission(), "milestones", null, 0, -1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommission_Quotes(), this.getQuote(), this.getQuote_Commission(), "quotes", null, 0, -1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommission_Approvals(), this.getApproval(), this.getApproval_Commission(), "approvals", null, 0, -1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommission_Sheets(), this.getSheet(), this.getSheet_Commission(), "sheets", null, 0, -1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommission_Windows(), this.getWindow(), this.getWindow_Commission(), "windows", null, 0, -1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCommission_Studio(), this.getStudio(), null, "studio", null, 0, 1, Commission.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(clientEClass, Client.class, "Client", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getClient_Commission(), this.getCommission(), this.getCommission_Client(), "commission", null, 0, 1, Client.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClient_Contact(), ecorePackage.getEString(), "contact", null, 0, 1, Client.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClient_Address(), ecorePackage.getEString(), "address", null, 0, 1, Client.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(siteEClass, Site.class, "Site", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getSite_Commission(), this.getCommission(), this.getCommission_Site(), "commission", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_Address(), ecorePackage.getEString(), "address", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_Access(), ecorePackage.getEString(), "access", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_DistanceKm(), ecorePackage.getEDoubleObject(), "distanceKm", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_Trips(), ecorePackage.getEInt(), "trips", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(milestoneEClass, Milestone.class, "Milestone", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getMilestone_Commission(), this.getCommission(), this.getCommission_Milestones(), "commission", null, 0, 1, Milestone.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMilestone_Due(), this.getDay(), "due", null, 0, 1, Milestone.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMilestone_Done(), this.getDay(), "done", null, 0, 1, Milestone.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMilestone_WorkShare(), ecorePackage.getEDoubleObject(), "workShare", null, 0, 1, Milestone.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMilestone_PayShare(), ecorePackage.getEDoubleObject(), "payShare", null, 0, 1, Milestone.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(quoteEClass, Quote.class, "Quote", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getQuote_Commission(), this.getCommission(), this.getCommission_Quotes(), "commission", null, 0, 1, Quote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuote_Number(), ecorePackage.getEString(), "number", null, 0, 1, Quote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuote_State(), this.getQuoteState(), "state", null, 0, 1, Quote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuote_Dated(), this.getDay(), "dated", null, 0, 1, Quote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuote_ValidUntil(), this.getDay(), "validUntil", null, 0, 1, Quote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuote_Currency(), ecorePackage.getEString(), "currency", null, 0, 1, Quote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuote_Total(), ecorePackage.getEBigDecimal(), "total", null, 0, 1, Quote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getQuote_Lines(), this.getQuoteLine(), this.getQuoteLine_Quote(), "lines", null, 0, -1, Quote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuote_Changes(), ecorePackage.getEString(), "changes", null, 0, 1, Quote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuote_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, Quote.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(quoteLineEClass, QuoteLine.class, "QuoteLine", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getQuoteLine_Quote(), this.getQuote(), this.getQuote_Lines(), "quote", null, 0, 1, QuoteLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuoteLine_Text(), ecorePackage.getEString(), "text", null, 0, 1, QuoteLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuoteLine_SourceKey(), ecorePackage.getEString(), "sourceKey", null, 0, 1, QuoteLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuoteLine_WindowName(), ecorePackage.getEString(), "windowName", null, 0, 1, QuoteLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuoteLine_Quantity(), ecorePackage.getEDouble(), "quantity", null, 0, 1, QuoteLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuoteLine_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, QuoteLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuoteLine_UnitPrice(), ecorePackage.getEBigDecimal(), "unitPrice", null, 0, 1, QuoteLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getQuoteLine_Amount(), ecorePackage.getEBigDecimal(), "amount", null, 0, 1, QuoteLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(approvalEClass, Approval.class, "Approval", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getApproval_Commission(), this.getCommission(), this.getCommission_Approvals(), "commission", null, 0, 1, Approval.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproval_On(), this.getDay(), "on", null, 0, 1, Approval.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproval_By(), ecorePackage.getEString(), "by", null, 0, 1, Approval.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getApproval_Quote(), this.getQuote(), null, "quote", null, 0, 1, Approval.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getApproval_Colourway(), this.getColourway(), null, "colourway", null, 0, 1, Approval.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sheetEClass, Sheet.class, "Sheet", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getSheet_Commission(), this.getCommission(), this.getCommission_Sheets(), "commission", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Number(), ecorePackage.getEInt(), "number", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Paper(), ecorePackage.getEString(), "paper", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_WidthMm(), ecorePackage.getEDouble(), "widthMm", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_HeightMm(), ecorePackage.getEDouble(), "heightMm", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_MarginMm(), ecorePackage.getEDouble(), "marginMm", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_ProcessKey(), ecorePackage.getEString(), "processKey", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_TonerSide(), this.getTonerSide(), "tonerSide", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Dpi(), ecorePackage.getEInt(), "dpi", "1200", 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSheet_Placements(), this.getPlacement(), this.getPlacement_Sheet(), "placements", null, 0, -1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSheet_Files(), this.getMadeFile(), null, "files", null, 0, -1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_ContentKey(), ecorePackage.getEString(), "contentKey", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(placementEClass, Placement.class, "Placement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPlacement_Sheet(), this.getSheet(), this.getSheet_Placements(), "sheet", null, 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPlacement_Stencil(), this.getStencil(), null, "stencil", null, 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_XMm(), ecorePackage.getEDouble(), "xMm", null, 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_YMm(), ecorePackage.getEDouble(), "yMm", null, 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_RotationDeg(), ecorePackage.getEDouble(), "rotationDeg", null, 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(windowEClass, Window.class, "Window", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWindow_FormatVersion(), ecorePackage.getEString(), "formatVersion", null, 0, 1, Window.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWindow_Name(), ecorePackage.getEString(), "name", null, 0, 1, Window.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWindow_Title(), ecorePackage.getEString(), "title", null, 0, 1, Window.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWindow_Note(), ecorePackage.getEString(), "note", null, 0, 1, Window.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWindow_Commission(), this.getCommission(), this.getCommission_Windows(), "commission", null, 0, 1, Window.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWindow_Opening(), this.getOpening(), this.getOpening_Window(), "opening", null, 0, 1, Window.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWindow_Colourways(), this.getColourway(), this.getColourway_Window(), "colourways", null, 0, -1, Window.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWindow_Chosen(), this.getColourway(), null, "chosen", null, 0, 1, Window.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWindow_Panels(), this.getPanel(), this.getPanel_Window(), "panels", null, 0, -1, Window.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(openingEClass, Opening.class, "Opening", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getOpening_Window(), this.getWindow(), this.getWindow_Opening(), "window", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_Kind(), this.getOpeningKind(), "kind", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_SightWidthMm(), ecorePackage.getEDouble(), "sightWidthMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_SightHeightMm(), ecorePackage.getEDouble(), "sightHeightMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_TightWidthMm(), ecorePackage.getEDouble(), "tightWidthMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_TightHeightMm(), ecorePackage.getEDouble(), "tightHeightMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_Count(), ecorePackage.getEInt(), "count", "1", 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_Overhead(), ecorePackage.getEBoolean(), "overhead", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_InDoor(), ecorePackage.getEBoolean(), "inDoor", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_TemplateFile(), ecorePackage.getEString(), "templateFile", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_Note(), ecorePackage.getEString(), "note", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_JambMm(), ecorePackage.getEDoubleObject(), "jambMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_RiseMm(), ecorePackage.getEDoubleObject(), "riseMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_TopMm(), ecorePackage.getEDoubleObject(), "topMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_RightMm(), ecorePackage.getEDoubleObject(), "rightMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_BottomMm(), ecorePackage.getEDoubleObject(), "bottomMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_LeftMm(), ecorePackage.getEDoubleObject(), "leftMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_DiagonalDownMm(), ecorePackage.getEDoubleObject(), "diagonalDownMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_DiagonalUpMm(), ecorePackage.getEDoubleObject(), "diagonalUpMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_RebateMm(), ecorePackage.getEDoubleObject(), "rebateMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_ClearanceMm(), ecorePackage.getEDoubleObject(), "clearanceMm", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_Outline(), this.getOutline(), "outline", null, 0, 1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_BarsMm(), ecorePackage.getEDouble(), "barsMm", null, 0, -1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOpening_DivisionsMm(), ecorePackage.getEDouble(), "divisionsMm", null, 0, -1, Opening.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(colourwayEClass, Colourway.class, "Colourway", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getColourway_Window(), this.getWindow(), this.getWindow_Colourways(), "window", null, 0, 1, Colourway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getColourway_Approved(), ecorePackage.getEBoolean(), "approved", null, 0, 1, Colourway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getColourway_ApprovedOn(), this.getDay(), "approvedOn", null, 0, 1, Colourway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getColourway_Choices(), this.getGlassChoice(), this.getGlassChoice_Colourway(), "choices", null, 0, -1, Colourway.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(glassChoiceEClass, GlassChoice.class, "GlassChoice", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getGlassChoice_Colourway(), this.getColourway(), this.getColourway_Choices(), "colourway", null, 0, 1, GlassChoice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGlassChoice_Piece(), this.getPiece(), this.getPiece_Choices(), "piece", null, 0, 1, GlassChoice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGlassChoice_Glass(), this.getGlassStock(), null, "glass", null, 0, 1, GlassChoice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(panelEClass, Panel.class, "Panel", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPanel_Window(), this.getWindow(), this.getWindow_Panels(), "window", null, 0, 1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPanel_XMm(), ecorePackage.getEDouble(), "xMm", null, 0, 1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPanel_YMm(), ecorePackage.getEDouble(), "yMm", null, 0, 1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPanel_Outline(), this.getOutline(), "outline", null, 0, 1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPanel_Join(), this.getJoinKind(), "join", null, 0, 1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPanel_GapMm(), ecorePackage.getEDoubleObject(), "gapMm", null, 0, 1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPanel_JoinStock(), this.getJoinStock(), null, "joinStock", null, 0, 1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPanel_Artwork(), this.getArtworkReference(), this.getArtworkReference_Panel(), "artwork", null, 0, -1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPanel_Pieces(), this.getPiece(), this.getPiece_Panel(), "pieces", null, 0, -1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPanel_Layers(), this.getDesignLayer(), this.getDesignLayer_Panel(), "layers", null, 0, -1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPanel_ContentKey(), ecorePackage.getEString(), "contentKey", null, 0, 1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPanel_EdgeAllowanceMm(), ecorePackage.getEDoubleObject(), "edgeAllowanceMm", null, 0, 1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPanel_OutlineElement(), ecorePackage.getEString(), "outlineElement", null, 0, 1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPanel_Mendings(), this.getAcceptedMend(), this.getAcceptedMend_Panel(), "mendings", null, 0, -1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPanel_JoinRules(), this.getJoinRule(), this.getJoinRule_Panel(), "joinRules", null, 0, -1, Panel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(artworkReferenceEClass, ArtworkReference.class, "ArtworkReference", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getArtworkReference_Panel(), this.getPanel(), this.getPanel_Artwork(), "panel", null, 0, 1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkReference_File(), ecorePackage.getEString(), "file", null, 0, 1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkReference_OriginalName(), ecorePackage.getEString(), "originalName", null, 0, 1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkReference_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkReference_Revision(), ecorePackage.getEInt(), "revision", "1", 0, 1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkReference_Brought(), this.getMoment(), "brought", null, 0, 1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkReference_WidthMm(), ecorePackage.getEDouble(), "widthMm", null, 0, 1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkReference_HeightMm(), ecorePackage.getEDouble(), "heightMm", null, 0, 1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkReference_Scale(), ecorePackage.getEDouble(), "scale", "1", 0, 1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getArtworkReference_Roles(), this.getRoleAssignment(), this.getRoleAssignment_Artwork(), "roles", null, 0, -1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkReference_Page(), ecorePackage.getEInt(), "page", "1", 0, 1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkReference_RolesConfirmed(), ecorePackage.getEBoolean(), "rolesConfirmed", null, 0, 1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkReference_GlassLayers(), ecorePackage.getEString(), "glassLayers", null, 0, -1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkReference_UnusedLayers(), ecorePackage.getEString(), "unusedLayers", null, 0, -1, ArtworkReference.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(roleAssignmentEClass, RoleAssignment.class, "RoleAssignment", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getRoleAssignment_Artwork(), this.getArtworkReference(), this.getArtworkReference_Roles(), "artwork", null, 0, 1, RoleAssignment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoleAssignment_Role(), this.getLayerRole(), "role", null, 0, 1, RoleAssignment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoleAssignment_ArtLayer(), ecorePackage.getEString(), "artLayer", null, 0, 1, RoleAssignment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pieceEClass, Piece.class, "Piece", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPiece_Panel(), this.getPanel(), this.getPanel_Pieces(), "panel", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_Number(), ecorePackage.getEInt(), "number", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_Face(), this.getOutline(), "face", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_Net(), this.getOutline(), "net", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_LabelXMm(), ecorePackage.getEDouble(), "labelXMm", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_LabelYMm(), ecorePackage.getEDouble(), "labelYMm", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_InradiusMm(), ecorePackage.getEDouble(), "inradiusMm", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_AreaMm2(), ecorePackage.getEDouble(), "areaMm2", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_NetAreaMm2(), ecorePackage.getEDouble(), "netAreaMm2", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_PerimeterMm(), ecorePackage.getEDouble(), "perimeterMm", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_ShapeKey(), ecorePackage.getEString(), "shapeKey", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_Problems(), ecorePackage.getEString(), "problems", null, 0, -1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPiece_Neighbours(), this.getPiece(), null, "neighbours", null, 0, -1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPiece_Glass(), this.getGlassStock(), null, "glass", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPiece_Choices(), this.getGlassChoice(), this.getGlassChoice_Piece(), "choices", null, 0, -1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_State(), this.getMakingState(), "state", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_Retired(), ecorePackage.getEBoolean(), "retired", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_Note(), ecorePackage.getEString(), "note", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_Group(), ecorePackage.getEString(), "group", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_Locked(), ecorePackage.getEBoolean(), "locked", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiece_NumberedByHand(), ecorePackage.getEBoolean(), "numberedByHand", null, 0, 1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPiece_CameFrom(), this.getPiece(), this.getPiece_Became(), "cameFrom", null, 0, -1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPiece_Became(), this.getPiece(), this.getPiece_CameFrom(), "became", null, 0, -1, Piece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(designLayerEClass, DesignLayer.class, "DesignLayer", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getDesignLayer_Panel(), this.getPanel(), this.getPanel_Layers(), "panel", null, 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDesignLayer_Role(), this.getLayerRole(), "role", null, 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDesignLayer_ArtLayer(), ecorePackage.getEString(), "artLayer", null, 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDesignLayer_Face(), this.getFace(), "face", null, 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDesignLayer_Paint(), this.getPaint(), null, "paint", null, 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDesignLayer_Medium(), this.getMedium(), null, "medium", null, 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDesignLayer_Mesh(), this.getMesh(), null, "mesh", null, 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDesignLayer_Schedule(), this.getFiringSchedule(), null, "schedule", null, 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDesignLayer_FiringOrder(), ecorePackage.getEInt(), "firingOrder", "1", 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDesignLayer_BleedMm(), ecorePackage.getEDouble(), "bleedMm", "1.5", 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDesignLayer_SightLine(), this.getSightLineRule(), "sightLine", "print under", 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDesignLayer_SightLineMm(), ecorePackage.getEDouble(), "sightLineMm", "2.5", 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDesignLayer_ByHand(), ecorePackage.getEBoolean(), "byHand", null, 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDesignLayer_Recipe(), this.getStencilRecipe(), this.getStencilRecipe_Layer(), "recipe", null, 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDesignLayer_Stencils(), this.getStencil(), this.getStencil_Layer(), "stencils", null, 0, -1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDesignLayer_State(), this.getMakingState(), "state", null, 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDesignLayer_ContentKey(), ecorePackage.getEString(), "contentKey", null, 0, 1, DesignLayer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stencilRecipeEClass, StencilRecipe.class, "StencilRecipe", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getStencilRecipe_Layer(), this.getDesignLayer(), this.getDesignLayer_Recipe(), "layer", null, 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_Method(), ecorePackage.getEString(), "method", "am", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_Dpi(), ecorePackage.getEInt(), "dpi", "1200", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_Lpi(), ecorePackage.getEDouble(), "lpi", "40", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_AngleDeg(), ecorePackage.getEDouble(), "angleDeg", "22.5", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_Dot(), ecorePackage.getEString(), "dot", "round", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_DotMm(), ecorePackage.getEDouble(), "dotMm", "0.254", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_Filter(), ecorePackage.getEString(), "filter", "floyd-steinberg", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_Seed(), ecorePackage.getELong(), "seed", "1", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_ToneMode(), this.getToneMode(), "toneMode", null, 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_ToneFrom(), ecorePackage.getEDouble(), "toneFrom", "0", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_ToneTo(), ecorePackage.getEDoubleObject(), "toneTo", null, 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStencilRecipe_Calibration(), this.getToneCalibration(), null, "calibration", null, 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_EndLow(), ecorePackage.getEDouble(), "endLow", "0", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_EndHigh(), ecorePackage.getEDouble(), "endHigh", "1", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_EndRule(), this.getEndRule(), "endRule", null, 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_ProcessKey(), ecorePackage.getEString(), "processKey", "fused-sheet", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_Mirror(), this.getMirrorRule(), "mirror", null, 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_OpenMm(), ecorePackage.getEDoubleObject(), "openMm", null, 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_BridgeMm(), ecorePackage.getEDoubleObject(), "bridgeMm", null, 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_Course(), ecorePackage.getEString(), "course", "straight", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_CourseLayer(), ecorePackage.getEString(), "courseLayer", null, 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_NoiseSide(), ecorePackage.getEInt(), "noiseSide", "64", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_Clump(), ecorePackage.getEDouble(), "clump", "1", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_Supercell(), ecorePackage.getEInt(), "supercell", "0", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_Curve(), ecorePackage.getEString(), "curve", null, 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilRecipe_TrapMm(), ecorePackage.getEDouble(), "trapMm", "0", 0, 1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStencilRecipe_Mends(), this.getMendedPlace(), this.getMendedPlace_Recipe(), "mends", null, 0, -1, StencilRecipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stencilEClass, Stencil.class, "Stencil", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getStencil_Layer(), this.getDesignLayer(), this.getDesignLayer_Stencils(), "layer", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_Number(), ecorePackage.getEInt(), "number", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStencil_Frame(), this.getScreenFrame(), null, "frame", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_WidthMm(), ecorePackage.getEDouble(), "widthMm", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_HeightMm(), ecorePackage.getEDouble(), "heightMm", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_OriginXMm(), ecorePackage.getEDouble(), "originXMm", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_OriginYMm(), ecorePackage.getEDouble(), "originYMm", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_WidthPx(), ecorePackage.getEInt(), "widthPx", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_HeightPx(), ecorePackage.getEInt(), "heightPx", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_Prints(), ecorePackage.getEInt(), "prints", "1", 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStencil_Pieces(), this.getStencilPiece(), this.getStencilPiece_Stencil(), "pieces", null, 0, -1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStencil_Files(), this.getMadeFile(), null, "files", null, 0, -1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_ContentKey(), ecorePackage.getEString(), "contentKey", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_Coverage(), ecorePackage.getEDoubleObject(), "coverage", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_TooFine(), ecorePackage.getEInt(), "tooFine", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_BridgesLost(), ecorePackage.getEInt(), "bridgesLost", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencil_Retired(), ecorePackage.getEBoolean(), "retired", null, 0, 1, Stencil.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stencilPieceEClass, StencilPiece.class, "StencilPiece", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getStencilPiece_Stencil(), this.getStencil(), this.getStencil_Pieces(), "stencil", null, 0, 1, StencilPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStencilPiece_Piece(), this.getPiece(), null, "piece", null, 0, 1, StencilPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilPiece_XMm(), ecorePackage.getEDouble(), "xMm", null, 0, 1, StencilPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilPiece_YMm(), ecorePackage.getEDouble(), "yMm", null, 0, 1, StencilPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilPiece_RotationDeg(), ecorePackage.getEDouble(), "rotationDeg", null, 0, 1, StencilPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilPiece_Spot(), ecorePackage.getEInt(), "spot", null, 0, 1, StencilPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilPiece_Prints(), ecorePackage.getEInt(), "prints", "1", 0, 1, StencilPiece.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(settingEClass, Map.Entry.class, "Setting", !IS_ABSTRACT, !IS_INTERFACE, !IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSetting_Key(), ecorePackage.getEString(), "key", null, 1, 1, Map.Entry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSetting_Value(), ecorePackage.getEString(), "value", null, 1, 1, Map.Entry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(makingRecordEClass, MakingRecord.class, "MakingRecord", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMakingRecord_Id(), ecorePackage.getEString(), "id", null, 0, 1, MakingRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakingRecord_Time(), this.getMoment(), "time", null, 0, 1, MakingRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakingRecord_Kind(), ecorePackage.getEString(), "kind", null, 0, 1, MakingRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakingRecord_Who(), ecorePackage.getEString(), "who", null, 0, 1, MakingRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakingRecord_Writer(), ecorePackage.getEString(), "writer", null, 0, 1, MakingRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakingRecord_Used(), ecorePackage.getEString(), "used", null, 0, -1, MakingRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakingRecord_Made(), ecorePackage.getEString(), "made", null, 0, -1, MakingRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMakingRecord_Settings(), this.getSetting(), null, "settings", null, 0, -1, MakingRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakingRecord_Supersedes(), ecorePackage.getEString(), "supersedes", null, 0, -1, MakingRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakingRecord_Note(), ecorePackage.getEString(), "note", null, 0, 1, MakingRecord.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakingRecord_File(), ecorePackage.getEString(), "file", null, 0, 1, MakingRecord.class, IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMakingRecord_Line(), ecorePackage.getEInt(), "line", null, 0, 1, MakingRecord.class, IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(artworkBroughtEClass, ArtworkBrought.class, "ArtworkBrought", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getArtworkBrought_WindowId(), ecorePackage.getEString(), "windowId", null, 0, 1, ArtworkBrought.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkBrought_PanelId(), ecorePackage.getEString(), "panelId", null, 0, 1, ArtworkBrought.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkBrought_ArtworkFile(), ecorePackage.getEString(), "artworkFile", null, 0, 1, ArtworkBrought.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkBrought_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, ArtworkBrought.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkBrought_Revision(), ecorePackage.getEInt(), "revision", null, 0, 1, ArtworkBrought.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getArtworkBrought_WidthMm(), ecorePackage.getEDouble(), "widthMm", null, 0, 1, ArtworkBrought.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(piecesMadeEClass, PiecesMade.class, "PiecesMade", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPiecesMade_WindowId(), ecorePackage.getEString(), "windowId", null, 0, 1, PiecesMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiecesMade_PanelId(), ecorePackage.getEString(), "panelId", null, 0, 1, PiecesMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiecesMade_InputSha256(), ecorePackage.getEString(), "inputSha256", null, 0, 1, PiecesMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiecesMade_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, PiecesMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPiecesMade_Pieces(), ecorePackage.getEInt(), "pieces", null, 0, 1, PiecesMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPiecesMade_Files(), this.getMadeFile(), null, "files", null, 0, -1, PiecesMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stencilMadeEClass, StencilMade.class, "StencilMade", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStencilMade_WindowId(), ecorePackage.getEString(), "windowId", null, 0, 1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilMade_LayerId(), ecorePackage.getEString(), "layerId", null, 0, 1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilMade_StencilId(), ecorePackage.getEString(), "stencilId", null, 0, 1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilMade_PaintId(), ecorePackage.getEString(), "paintId", null, 0, 1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilMade_PieceIds(), ecorePackage.getEString(), "pieceIds", null, 0, -1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilMade_InputSha256(), ecorePackage.getEString(), "inputSha256", null, 0, 1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilMade_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilMade_Coverage(), ecorePackage.getEDoubleObject(), "coverage", null, 0, 1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilMade_TooFine(), ecorePackage.getEInt(), "tooFine", null, 0, 1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilMade_BridgesLost(), ecorePackage.getEInt(), "bridgesLost", null, 0, 1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilMade_WidthPx(), ecorePackage.getEInt(), "widthPx", null, 0, 1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStencilMade_HeightPx(), ecorePackage.getEInt(), "heightPx", null, 0, 1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStencilMade_Files(), this.getMadeFile(), null, "files", null, 0, -1, StencilMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sheetMadeEClass, SheetMade.class, "SheetMade", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSheetMade_SheetId(), ecorePackage.getEString(), "sheetId", null, 0, 1, SheetMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheetMade_Number(), ecorePackage.getEInt(), "number", null, 0, 1, SheetMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheetMade_StencilIds(), ecorePackage.getEString(), "stencilIds", null, 0, -1, SheetMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheetMade_InputSha256(), ecorePackage.getEString(), "inputSha256", null, 0, 1, SheetMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheetMade_Sha256(), ecorePackage.getEString(), "sha256", null, 0, 1, SheetMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSheetMade_Files(), this.getMadeFile(), null, "files", null, 0, -1, SheetMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(documentMadeEClass, DocumentMade.class, "DocumentMade", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDocumentMade_What(), ecorePackage.getEString(), "what", null, 0, 1, DocumentMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDocumentMade_Files(), this.getMadeFile(), null, "files", null, 0, -1, DocumentMade.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(screenLoadEClass, ScreenLoad.class, "ScreenLoad", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getScreenLoad_FrameId(), ecorePackage.getEString(), "frameId", null, 0, 1, ScreenLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreenLoad_SheetId(), ecorePackage.getEString(), "sheetId", null, 0, 1, ScreenLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreenLoad_StencilIds(), ecorePackage.getEString(), "stencilIds", null, 0, -1, ScreenLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreenLoad_ProcessKey(), ecorePackage.getEString(), "processKey", null, 0, 1, ScreenLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreenLoad_PressC(), ecorePackage.getEDoubleObject(), "pressC", null, 0, 1, ScreenLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreenLoad_PressMin(), ecorePackage.getEDoubleObject(), "pressMin", null, 0, 1, ScreenLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreenLoad_CoolMin(), ecorePackage.getEDoubleObject(), "coolMin", null, 0, 1, ScreenLoad.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(reclaimEClass, Reclaim.class, "Reclaim", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getReclaim_FrameIds(), ecorePackage.getEString(), "frameIds", null, 0, -1, Reclaim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReclaim_ScreenLoadIds(), ecorePackage.getEString(), "screenLoadIds", null, 0, -1, Reclaim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReclaim_Cleaner(), ecorePackage.getEString(), "cleaner", null, 0, 1, Reclaim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(paintMixEClass, PaintMix.class, "PaintMix", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPaintMix_Name(), ecorePackage.getEString(), "name", null, 0, 1, PaintMix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaintMix_PaintId(), ecorePackage.getEString(), "paintId", null, 0, 1, PaintMix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaintMix_LotId(), ecorePackage.getEString(), "lotId", null, 0, 1, PaintMix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaintMix_MediumId(), ecorePackage.getEString(), "mediumId", null, 0, 1, PaintMix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaintMix_PowderG(), ecorePackage.getEDoubleObject(), "powderG", null, 0, 1, PaintMix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaintMix_MediumG(), ecorePackage.getEDoubleObject(), "mediumG", null, 0, 1, PaintMix.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(printRunEClass, PrintRun.class, "PrintRun", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPrintRun_ScreenLoadId(), ecorePackage.getEString(), "screenLoadId", null, 0, 1, PrintRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrintRun_StencilId(), ecorePackage.getEString(), "stencilId", null, 0, 1, PrintRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrintRun_MixId(), ecorePackage.getEString(), "mixId", null, 0, 1, PrintRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrintRun_WindowId(), ecorePackage.getEString(), "windowId", null, 0, 1, PrintRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrintRun_LayerId(), ecorePackage.getEString(), "layerId", null, 0, 1, PrintRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrintRun_PieceIds(), ecorePackage.getEString(), "pieceIds", null, 0, -1, PrintRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrintRun_Pulls(), ecorePackage.getEInt(), "pulls", "1", 0, 1, PrintRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrintRun_TemperatureC(), ecorePackage.getEDoubleObject(), "temperatureC", null, 0, 1, PrintRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrintRun_Humidity(), ecorePackage.getEDoubleObject(), "humidity", null, 0, 1, PrintRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrintRun_Bed(), ecorePackage.getEString(), "bed", null, 0, 1, PrintRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(firingEClass, Firing.class, "Firing", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFiring_Name(), ecorePackage.getEString(), "name", null, 0, 1, Firing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiring_KilnId(), ecorePackage.getEString(), "kilnId", null, 0, 1, Firing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiring_ScheduleId(), ecorePackage.getEString(), "scheduleId", null, 0, 1, Firing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFiring_Segments(), this.getRunSegment(), null, "segments", null, 0, -1, Firing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFiring_Load(), this.getShelfPlace(), null, "load", null, 0, -1, Firing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiring_CurveFile(), ecorePackage.getEString(), "curveFile", null, 0, 1, Firing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiring_CurveSha256(), ecorePackage.getEString(), "curveSha256", null, 0, 1, Firing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiring_PeakC(), ecorePackage.getEDoubleObject(), "peakC", null, 0, 1, Firing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFiring_EnergyKwh(), ecorePackage.getEDoubleObject(), "energyKwh", null, 0, 1, Firing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(runSegmentEClass, RunSegment.class, "RunSegment", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRunSegment_Name(), ecorePackage.getEString(), "name", null, 0, 1, RunSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunSegment_RateKPerH(), ecorePackage.getEDoubleObject(), "rateKPerH", null, 0, 1, RunSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunSegment_TargetC(), ecorePackage.getEDouble(), "targetC", null, 0, 1, RunSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunSegment_SoakMin(), ecorePackage.getEDouble(), "soakMin", null, 0, 1, RunSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRunSegment_Vent(), ecorePackage.getEBoolean(), "vent", null, 0, 1, RunSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(shelfPlaceEClass, ShelfPlace.class, "ShelfPlace", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getShelfPlace_WindowId(), ecorePackage.getEString(), "windowId", null, 0, 1, ShelfPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShelfPlace_PieceId(), ecorePackage.getEString(), "pieceId", null, 0, 1, ShelfPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShelfPlace_LayerIds(), ecorePackage.getEString(), "layerIds", null, 0, -1, ShelfPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShelfPlace_Place(), ecorePackage.getEString(), "place", null, 0, 1, ShelfPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShelfPlace_Shelf(), ecorePackage.getEInt(), "shelf", "1", 0, 1, ShelfPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShelfPlace_XMm(), ecorePackage.getEDoubleObject(), "xMm", null, 0, 1, ShelfPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShelfPlace_YMm(), ecorePackage.getEDoubleObject(), "yMm", null, 0, 1, ShelfPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShelfPlace_RotationDeg(), ecorePackage.getEDoubleObject(), "rotationDeg", null, 0, 1, ShelfPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(glazingEClass, Glazing.class, "Glazing", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getGlazing_WindowId(), ecorePackage.getEString(), "windowId", null, 0, 1, Glazing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlazing_PanelId(), ecorePackage.getEString(), "panelId", null, 0, 1, Glazing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlazing_PieceIds(), ecorePackage.getEString(), "pieceIds", null, 0, -1, Glazing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlazing_Join(), this.getJoinKind(), "join", null, 0, 1, Glazing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlazing_MassKg(), ecorePackage.getEDoubleObject(), "massKg", null, 0, 1, Glazing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(fixingEClass, Fixing.class, "Fixing", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFixing_WindowId(), ecorePackage.getEString(), "windowId", null, 0, 1, Fixing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixing_PanelId(), ecorePackage.getEString(), "panelId", null, 0, 1, Fixing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFixing_Place(), ecorePackage.getEString(), "place", null, 0, 1, Fixing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(defectEClass, Defect.class, "Defect", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDefect_WindowId(), ecorePackage.getEString(), "windowId", null, 0, 1, Defect.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDefect_PieceId(), ecorePackage.getEString(), "pieceId", null, 0, 1, Defect.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDefect_LayerId(), ecorePackage.getEString(), "layerId", null, 0, 1, Defect.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDefect_DefectKind(), ecorePackage.getEString(), "defectKind", null, 0, 1, Defect.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDefect_FoundAt(), ecorePackage.getEString(), "foundAt", null, 0, 1, Defect.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDefect_Severity(), ecorePackage.getEString(), "severity", null, 0, 1, Defect.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDefect_XMm(), ecorePackage.getEDoubleObject(), "xMm", null, 0, 1, Defect.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDefect_YMm(), ecorePackage.getEDoubleObject(), "yMm", null, 0, 1, Defect.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDefect_Photo(), ecorePackage.getEString(), "photo", null, 0, 1, Defect.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDefect_SuspectedCause(), ecorePackage.getEString(), "suspectedCause", null, 0, 1, Defect.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDefect_Disposition(), this.getDisposition(), "disposition", null, 0, 1, Defect.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(remakeEClass, Remake.class, "Remake", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRemake_WindowId(), ecorePackage.getEString(), "windowId", null, 0, 1, Remake.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRemake_PieceId(), ecorePackage.getEString(), "pieceId", null, 0, 1, Remake.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRemake_LayerIds(), ecorePackage.getEString(), "layerIds", null, 0, -1, Remake.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRemake_DefectId(), ecorePackage.getEString(), "defectId", null, 0, 1, Remake.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRemake_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, Remake.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(noteEClass, Note.class, "Note", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getNote_Text(), ecorePackage.getEString(), "text", null, 0, 1, Note.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getNote_AboutIds(), ecorePackage.getEString(), "aboutIds", null, 0, -1, Note.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(costLineEClass, CostLine.class, "CostLine", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCostLine_SourceKey(), ecorePackage.getEString(), "sourceKey", null, 0, 1, CostLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostLine_What(), ecorePackage.getEString(), "what", null, 0, 1, CostLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostLine_WindowId(), ecorePackage.getEString(), "windowId", null, 0, 1, CostLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostLine_Estimate(), ecorePackage.getEBoolean(), "estimate", null, 0, 1, CostLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostLine_Quantity(), ecorePackage.getEDoubleObject(), "quantity", null, 0, 1, CostLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostLine_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, CostLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostLine_UnitPrice(), ecorePackage.getEBigDecimal(), "unitPrice", null, 0, 1, CostLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostLine_Amount(), ecorePackage.getEBigDecimal(), "amount", null, 0, 1, CostLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostLine_Currency(), ecorePackage.getEString(), "currency", null, 0, 1, CostLine.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stockMoveEClass, StockMove.class, "StockMove", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStockMove_ItemId(), ecorePackage.getEString(), "itemId", null, 0, 1, StockMove.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockMove_Quantity(), ecorePackage.getEDoubleObject(), "quantity", null, 0, 1, StockMove.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockMove_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, StockMove.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockMove_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, StockMove.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(approvedEClass, Approved.class, "Approved", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getApproved_ApprovalId(), ecorePackage.getEString(), "approvalId", null, 0, 1, Approved.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproved_QuoteId(), ecorePackage.getEString(), "quoteId", null, 0, 1, Approved.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getApproved_ColourwayId(), ecorePackage.getEString(), "colourwayId", null, 0, 1, Approved.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(otherRecordEClass, OtherRecord.class, "OtherRecord", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(stockSheetEClass, StockSheet.class, "StockSheet", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getStockSheet_Glass(), this.getGlassStock(), this.getGlassStock_Sheets(), "glass", null, 0, 1, StockSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockSheet_WidthMm(), ecorePackage.getEDouble(), "widthMm", null, 0, 1, StockSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockSheet_HeightMm(), ecorePackage.getEDouble(), "heightMm", null, 0, 1, StockSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockSheet_Outline(), this.getOutline(), "outline", null, 0, 1, StockSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockSheet_GrainDeg(), ecorePackage.getEDouble(), "grainDeg", "90", 0, 1, StockSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockSheet_Offcut(), ecorePackage.getEBoolean(), "offcut", null, 0, 1, StockSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockSheet_CutFrom(), ecorePackage.getEString(), "cutFrom", null, 0, 1, StockSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockSheet_UsedUp(), ecorePackage.getEBoolean(), "usedUp", null, 0, 1, StockSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStockSheet_Flaws(), this.getGlassFlaw(), this.getGlassFlaw_Sheet(), "flaws", null, 0, -1, StockSheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(glassFlawEClass, GlassFlaw.class, "GlassFlaw", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getGlassFlaw_Sheet(), this.getStockSheet(), this.getStockSheet_Flaws(), "sheet", null, 0, 1, GlassFlaw.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassFlaw_Kind(), ecorePackage.getEString(), "kind", null, 0, 1, GlassFlaw.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGlassFlaw_Outline(), this.getOutline(), "outline", null, 0, 1, GlassFlaw.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(mendedPlaceEClass, MendedPlace.class, "MendedPlace", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getMendedPlace_Recipe(), this.getStencilRecipe(), this.getStencilRecipe_Mends(), "recipe", null, 0, 1, MendedPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMendedPlace_Kind(), this.getMendKind(), "kind", null, 0, 1, MendedPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMendedPlace_XMm(), ecorePackage.getEDouble(), "xMm", null, 0, 1, MendedPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMendedPlace_YMm(), ecorePackage.getEDouble(), "yMm", null, 0, 1, MendedPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMendedPlace_WidthMm(), ecorePackage.getEDouble(), "widthMm", null, 0, 1, MendedPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(acceptedMendEClass, AcceptedMend.class, "AcceptedMend", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getAcceptedMend_Panel(), this.getPanel(), this.getPanel_Mendings(), "panel", null, 0, 1, AcceptedMend.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcceptedMend_Key(), ecorePackage.getEString(), "key", null, 0, 1, AcceptedMend.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcceptedMend_Words(), ecorePackage.getEString(), "words", null, 0, 1, AcceptedMend.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcceptedMend_XMm(), ecorePackage.getEDouble(), "xMm", null, 0, 1, AcceptedMend.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAcceptedMend_YMm(), ecorePackage.getEDouble(), "yMm", null, 0, 1, AcceptedMend.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(joinRuleEClass, JoinRule.class, "JoinRule", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getJoinRule_Panel(), this.getPanel(), this.getPanel_JoinRules(), "panel", null, 0, 1, JoinRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinRule_ArtLayer(), ecorePackage.getEString(), "artLayer", null, 0, 1, JoinRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getJoinRule_First(), this.getPiece(), null, "first", null, 0, 1, JoinRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getJoinRule_Second(), this.getPiece(), null, "second", null, 0, 1, JoinRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinRule_Join(), this.getJoinKind(), "join", null, 0, 1, JoinRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getJoinRule_JoinStock(), this.getJoinStock(), null, "joinStock", null, 0, 1, JoinRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJoinRule_GapMm(), ecorePackage.getEDoubleObject(), "gapMm", null, 0, 1, JoinRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(unitSystemEEnum, UnitSystem.class, "UnitSystem");
		addEEnumLiteral(unitSystemEEnum, UnitSystem.MM);
		addEEnumLiteral(unitSystemEEnum, UnitSystem.INCH);

		initEEnum(layerRoleEEnum, LayerRole.class, "LayerRole");
		addEEnumLiteral(layerRoleEEnum, LayerRole.CUTLINE);
		addEEnumLiteral(layerRoleEEnum, LayerRole.TRACE);
		addEEnumLiteral(layerRoleEEnum, LayerRole.MATT);
		addEEnumLiteral(layerRoleEEnum, LayerRole.LETTERING);
		addEEnumLiteral(layerRoleEEnum, LayerRole.STAIN);
		addEEnumLiteral(layerRoleEEnum, LayerRole.ENAMEL);

		initEEnum(faceEEnum, Face.class, "Face");
		addEEnumLiteral(faceEEnum, Face.INTERIOR);
		addEEnumLiteral(faceEEnum, Face.EXTERIOR);

		initEEnum(makingStateEEnum, MakingState.class, "MakingState");
		addEEnumLiteral(makingStateEEnum, MakingState.DRAWN);
		addEEnumLiteral(makingStateEEnum, MakingState.ON_SHEET);
		addEEnumLiteral(makingStateEEnum, MakingState.ON_SCREEN);
		addEEnumLiteral(makingStateEEnum, MakingState.PRINTED);
		addEEnumLiteral(makingStateEEnum, MakingState.FIRED);
		addEEnumLiteral(makingStateEEnum, MakingState.GLAZED);
		addEEnumLiteral(makingStateEEnum, MakingState.IN_DOUBT);
		addEEnumLiteral(makingStateEEnum, MakingState.TO_REMAKE);

		initEEnum(joinKindEEnum, JoinKind.class, "JoinKind");
		addEEnumLiteral(joinKindEEnum, JoinKind.FOIL);
		addEEnumLiteral(joinKindEEnum, JoinKind.LEAD);

		initEEnum(openingKindEEnum, OpeningKind.class, "OpeningKind");
		addEEnumLiteral(openingKindEEnum, OpeningKind.RECTANGLE);
		addEEnumLiteral(openingKindEEnum, OpeningKind.SEGMENTAL_HEAD);
		addEEnumLiteral(openingKindEEnum, OpeningKind.ROUND_HEAD);
		addEEnumLiteral(openingKindEEnum, OpeningKind.POINTED_HEAD);
		addEEnumLiteral(openingKindEEnum, OpeningKind.ROUNDEL);
		addEEnumLiteral(openingKindEEnum, OpeningKind.SHAPED);
		addEEnumLiteral(openingKindEEnum, OpeningKind.THREE_CENTRED_HEAD);
		addEEnumLiteral(openingKindEEnum, OpeningKind.OGEE_HEAD);
		addEEnumLiteral(openingKindEEnum, OpeningKind.TREFOIL);
		addEEnumLiteral(openingKindEEnum, OpeningKind.QUATREFOIL);
		addEEnumLiteral(openingKindEEnum, OpeningKind.CINQUEFOIL);

		initEEnum(paintKindEEnum, PaintKind.class, "PaintKind");
		addEEnumLiteral(paintKindEEnum, PaintKind.TRACE);
		addEEnumLiteral(paintKindEEnum, PaintKind.MATT);
		addEEnumLiteral(paintKindEEnum, PaintKind.STAIN);
		addEEnumLiteral(paintKindEEnum, PaintKind.ENAMEL);

		initEEnum(mediumBaseEEnum, MediumBase.class, "MediumBase");
		addEEnumLiteral(mediumBaseEEnum, MediumBase.OIL);
		addEEnumLiteral(mediumBaseEEnum, MediumBase.WATER);

		initEEnum(sheetMaterialEEnum, SheetMaterial.class, "SheetMaterial");
		addEEnumLiteral(sheetMaterialEEnum, SheetMaterial.FUSED_FILM);
		addEEnumLiteral(sheetMaterialEEnum, SheetMaterial.POSITIVE_FILM);
		addEEnumLiteral(sheetMaterialEEnum, SheetMaterial.PAPER);

		initEEnum(tonerSideEEnum, TonerSide.class, "TonerSide");
		addEEnumLiteral(tonerSideEEnum, TonerSide.PRINT);
		addEEnumLiteral(tonerSideEEnum, TonerSide.SQUEEGEE);

		initEEnum(sightLineRuleEEnum, SightLineRule.class, "SightLineRule");
		addEEnumLiteral(sightLineRuleEEnum, SightLineRule.KEEP_OFF);
		addEEnumLiteral(sightLineRuleEEnum, SightLineRule.FADE);
		addEEnumLiteral(sightLineRuleEEnum, SightLineRule.PRINT_UNDER);

		initEEnum(toneModeEEnum, ToneMode.class, "ToneMode");
		addEEnumLiteral(toneModeEEnum, ToneMode.STRETCH);
		addEEnumLiteral(toneModeEEnum, ToneMode.LINEAR);
		addEEnumLiteral(toneModeEEnum, ToneMode.CALIBRATED);

		initEEnum(mirrorRuleEEnum, MirrorRule.class, "MirrorRule");
		addEEnumLiteral(mirrorRuleEEnum, MirrorRule.AUTO);
		addEEnumLiteral(mirrorRuleEEnum, MirrorRule.YES);
		addEEnumLiteral(mirrorRuleEEnum, MirrorRule.NO);

		initEEnum(endRuleEEnum, EndRule.class, "EndRule");
		addEEnumLiteral(endRuleEEnum, EndRule.CUT_OR_LIFT);
		addEEnumLiteral(endRuleEEnum, EndRule.CUT);
		addEEnumLiteral(endRuleEEnum, EndRule.LIFT);

		initEEnum(quoteStateEEnum, QuoteState.class, "QuoteState");
		addEEnumLiteral(quoteStateEEnum, QuoteState.DRAFT);
		addEEnumLiteral(quoteStateEEnum, QuoteState.SENT);
		addEEnumLiteral(quoteStateEEnum, QuoteState.ACCEPTED);
		addEEnumLiteral(quoteStateEEnum, QuoteState.DECLINED);

		initEEnum(dispositionEEnum, Disposition.class, "Disposition");
		addEEnumLiteral(dispositionEEnum, Disposition.OPEN);
		addEEnumLiteral(dispositionEEnum, Disposition.ACCEPT);
		addEEnumLiteral(dispositionEEnum, Disposition.TOUCH_UP);
		addEEnumLiteral(dispositionEEnum, Disposition.REMAKE);

		initEEnum(mendKindEEnum, MendKind.class, "MendKind");
		addEEnumLiteral(mendKindEEnum, MendKind.THICKEN);
		addEEnumLiteral(mendKindEEnum, MendKind.STRENGTHEN);

		// Initialize data types
		initEDataType(momentEDataType, Instant.class, "Moment", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(dayEDataType, LocalDate.class, "Day", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(outlineEDataType, OutlineMm.class, "Outline", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);

		// Create resource
		createResource(eNS_URI);
	}

} //CommissionPackageImpl
