/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each operation of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * A commission, its windows, the studio that makes them, and the record of what was made. Lengths in mm of the artwork's page (x right, y down from the top left), angles in degrees from x towards y, temperatures in degrees Celsius, masses in g.
 * <!-- end-model-doc -->
 * @see saddlebar.model.commission.CommissionFactory
 * @model kind="package"
 * @generated
 */
public interface CommissionPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "commission";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:saddlebar:commission:1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "commission";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	CommissionPackage eINSTANCE = saddlebar.model.commission.impl.CommissionPackageImpl.init();

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.IdentifiedImpl <em>Identified</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.IdentifiedImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getIdentified()
	 * @generated
	 */
	int IDENTIFIED = 0;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED__ID = 0;

	/**
	 * The number of structural features of the '<em>Identified</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED_FEATURE_COUNT = 1;

	/**
	 * The number of operations of the '<em>Identified</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.NamedImpl <em>Named</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.NamedImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getNamed()
	 * @generated
	 */
	int NAMED = 1;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED__NAME = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED__NOTE = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Named</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Named</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.MadeFileImpl <em>Made File</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.MadeFileImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMadeFile()
	 * @generated
	 */
	int MADE_FILE = 2;

	/**
	 * The feature id for the '<em><b>What</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MADE_FILE__WHAT = 0;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MADE_FILE__FILE = 1;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MADE_FILE__SHA256 = 2;

	/**
	 * The number of structural features of the '<em>Made File</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MADE_FILE_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Made File</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MADE_FILE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.StudioImpl <em>Studio</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.StudioImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStudio()
	 * @generated
	 */
	int STUDIO = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__FORMAT_VERSION = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Units</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__UNITS = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__CURRENCY = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Papers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__PAPERS = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Meshes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__MESHES = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Frames</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__FRAMES = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Paints</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__PAINTS = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Media</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__MEDIA = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Glass</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__GLASS = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Joins</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__JOINS = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Solders</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__SOLDERS = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Bars</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__BARS = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Kilns</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__KILNS = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Schedules</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__SCHEDULES = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Price Book</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__PRICE_BOOK = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Printers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__PRINTERS = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Sheet Stock</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__SHEET_STOCK = NAMED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Calibrations</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__CALIBRATIONS = NAMED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Processes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__PROCESSES = NAMED_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>People</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__PEOPLE = NAMED_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Suppliers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__SUPPLIERS = NAMED_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Commissions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__COMMISSIONS = NAMED_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Address</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__ADDRESS = NAMED_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Contact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__CONTACT = NAMED_FEATURE_COUNT + 23;

	/**
	 * The feature id for the '<em><b>Mark File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__MARK_FILE = NAMED_FEATURE_COUNT + 24;

	/**
	 * The feature id for the '<em><b>Accent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__ACCENT = NAMED_FEATURE_COUNT + 25;

	/**
	 * The feature id for the '<em><b>Terms</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO__TERMS = NAMED_FEATURE_COUNT + 26;

	/**
	 * The number of structural features of the '<em>Studio</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO_FEATURE_COUNT = NAMED_FEATURE_COUNT + 27;

	/**
	 * The number of operations of the '<em>Studio</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDIO_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.JoinedCommissionImpl <em>Joined Commission</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.JoinedCommissionImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getJoinedCommission()
	 * @generated
	 */
	int JOINED_COMMISSION = 4;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOINED_COMMISSION__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOINED_COMMISSION__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOINED_COMMISSION__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOINED_COMMISSION__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Folder</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOINED_COMMISSION__FOLDER = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Commission Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOINED_COMMISSION__COMMISSION_ID = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Joined</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOINED_COMMISSION__JOINED = NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Joined Commission</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOINED_COMMISSION_FEATURE_COUNT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Joined Commission</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOINED_COMMISSION_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PaperSizeImpl <em>Paper Size</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PaperSizeImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPaperSize()
	 * @generated
	 */
	int PAPER_SIZE = 5;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER_SIZE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER_SIZE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER_SIZE__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER_SIZE__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER_SIZE__WIDTH_MM = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER_SIZE__HEIGHT_MM = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER_SIZE__IN_USE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER_SIZE__SOURCE = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Paper Size</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER_SIZE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Paper Size</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER_SIZE_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.MeshImpl <em>Mesh</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.MeshImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMesh()
	 * @generated
	 */
	int MESH = 6;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MESH__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MESH__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MESH__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MESH__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Threads Per Inch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MESH__THREADS_PER_INCH = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Thread Um</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MESH__THREAD_UM = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MESH__SOURCE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Frames</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MESH__FRAMES = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Calibrations</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MESH__CALIBRATIONS = NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Mesh</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MESH_FEATURE_COUNT = NAMED_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Mesh</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MESH_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.ScreenFrameImpl <em>Screen Frame</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.ScreenFrameImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getScreenFrame()
	 * @generated
	 */
	int SCREEN_FRAME = 7;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FRAME__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FRAME__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FRAME__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FRAME__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Mesh</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FRAME__MESH = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Image Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FRAME__IMAGE_WIDTH_MM = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Image Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FRAME__IMAGE_HEIGHT_MM = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Squeegee Margin Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FRAME__SQUEEGEE_MARGIN_MM = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Mesh Turn Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FRAME__MESH_TURN_DEG = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Out Of Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FRAME__OUT_OF_USE = NAMED_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Screen Frame</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FRAME_FEATURE_COUNT = NAMED_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Screen Frame</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FRAME_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PaintImpl <em>Paint</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PaintImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPaint()
	 * @generated
	 */
	int PAINT = 8;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Family</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__FAMILY = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__KIND = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__COLOUR = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Solid Transmittance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__SOLID_TRANSMITTANCE = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Density GPer Cm3</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__DENSITY_GPER_CM3 = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Maturing From C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__MATURING_FROM_C = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Maturing To C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__MATURING_TO_C = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Powder To Medium</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__POWDER_TO_MEDIUM = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Contains Lead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__CONTAINS_LEAD = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Contains Cadmium</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__CONTAINS_CADMIUM = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Gold Bearing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__GOLD_BEARING = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Price Per Kg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__PRICE_PER_KG = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__SOURCE = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Medium</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__MEDIUM = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Supplier</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__SUPPLIER = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Lots</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__LOTS = NAMED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Transmittance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT__TRANSMITTANCE = NAMED_FEATURE_COUNT + 17;

	/**
	 * The number of structural features of the '<em>Paint</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_FEATURE_COUNT = NAMED_FEATURE_COUNT + 18;

	/**
	 * The number of operations of the '<em>Paint</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PaintLotImpl <em>Paint Lot</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PaintLotImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPaintLot()
	 * @generated
	 */
	int PAINT_LOT = 9;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_LOT__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_LOT__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_LOT__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Paint</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_LOT__PAINT = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Received</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_LOT__RECEIVED = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Mass G</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_LOT__MASS_G = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Price Per Kg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_LOT__PRICE_PER_KG = NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Paint Lot</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_LOT_FEATURE_COUNT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Paint Lot</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_LOT_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.MediumImpl <em>Medium</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.MediumImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMedium()
	 * @generated
	 */
	int MEDIUM = 10;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEDIUM__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEDIUM__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEDIUM__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEDIUM__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Base</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEDIUM__BASE = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Density GPer Cm3</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEDIUM__DENSITY_GPER_CM3 = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Price Per Kg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEDIUM__PRICE_PER_KG = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEDIUM__SOURCE = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Medium</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEDIUM_FEATURE_COUNT = NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Medium</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEDIUM_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.GlassStockImpl <em>Glass Stock</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.GlassStockImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getGlassStock()
	 * @generated
	 */
	int GLASS_STOCK = 11;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Family</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__FAMILY = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__COLOUR = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Thickness Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__THICKNESS_MM = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Textured</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__TEXTURED = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Grained</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__GRAINED = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Opal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__OPAL = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Density Kg Per M3</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__DENSITY_KG_PER_M3 = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Heat Model</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__HEAT_MODEL = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Sheet Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__SHEET_WIDTH_MM = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Sheet Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__SHEET_HEIGHT_MM = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Stock M2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__STOCK_M2 = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Price Per M2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__PRICE_PER_M2 = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__SOURCE = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Supplier</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__SUPPLIER = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Viscosity A</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__VISCOSITY_A = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Viscosity BK</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__VISCOSITY_BK = NAMED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Viscosity T0C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__VISCOSITY_T0C = NAMED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Expansion Per Million K</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__EXPANSION_PER_MILLION_K = NAMED_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Measured Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__MEASURED_MM = NAMED_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Transmittance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__TRANSMITTANCE = NAMED_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Sheets</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__SHEETS = NAMED_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Narrow Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__NARROW_MM = NAMED_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Needle Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__NEEDLE_DEG = NAMED_FEATURE_COUNT + 23;

	/**
	 * The feature id for the '<em><b>Inside Curve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__INSIDE_CURVE = NAMED_FEATURE_COUNT + 24;

	/**
	 * The feature id for the '<em><b>Inside Radius Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK__INSIDE_RADIUS_MM = NAMED_FEATURE_COUNT + 25;

	/**
	 * The number of structural features of the '<em>Glass Stock</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK_FEATURE_COUNT = NAMED_FEATURE_COUNT + 26;

	/**
	 * The number of operations of the '<em>Glass Stock</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_STOCK_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.JoinStockImpl <em>Join Stock</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.JoinStockImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getJoinStock()
	 * @generated
	 */
	int JOIN_STOCK = 12;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__KIND = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Thickness Um</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__THICKNESS_UM = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__WIDTH_MM = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Heart Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__HEART_MM = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Face Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__FACE_MM = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Mass GPer M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__MASS_GPER_M = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Price Per M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__PRICE_PER_M = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__SOURCE = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Sold Length Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK__SOLD_LENGTH_MM = NAMED_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Join Stock</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK_FEATURE_COUNT = NAMED_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Join Stock</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_STOCK_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.SolderStockImpl <em>Solder Stock</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.SolderStockImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSolderStock()
	 * @generated
	 */
	int SOLDER_STOCK = 13;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOLDER_STOCK__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOLDER_STOCK__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOLDER_STOCK__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOLDER_STOCK__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Tin Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOLDER_STOCK__TIN_SHARE = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Contains Lead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOLDER_STOCK__CONTAINS_LEAD = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Density GPer Cm3</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOLDER_STOCK__DENSITY_GPER_CM3 = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Price Per Kg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOLDER_STOCK__PRICE_PER_KG = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOLDER_STOCK__SOURCE = NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Solder Stock</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOLDER_STOCK_FEATURE_COUNT = NAMED_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Solder Stock</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOLDER_STOCK_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.BarStockImpl <em>Bar Stock</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.BarStockImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getBarStock()
	 * @generated
	 */
	int BAR_STOCK = 14;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BAR_STOCK__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BAR_STOCK__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BAR_STOCK__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BAR_STOCK__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BAR_STOCK__WIDTH_MM = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Depth Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BAR_STOCK__DEPTH_MM = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Round</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BAR_STOCK__ROUND = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Price Per M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BAR_STOCK__PRICE_PER_M = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BAR_STOCK__SOURCE = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Sold Length Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BAR_STOCK__SOLD_LENGTH_MM = NAMED_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Bar Stock</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BAR_STOCK_FEATURE_COUNT = NAMED_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Bar Stock</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BAR_STOCK_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.KilnImpl <em>Kiln</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.KilnImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getKiln()
	 * @generated
	 */
	int KILN = 15;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Shelf Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__SHELF_WIDTH_MM = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Shelf Depth Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__SHELF_DEPTH_MM = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Shelves</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__SHELVES = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Max C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__MAX_C = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Max Rate KPer H</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__MAX_RATE_KPER_H = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Natural Fall KPer H</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__NATURAL_FALL_KPER_H = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Power Kw</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__POWER_KW = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Offset K</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__OFFSET_K = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__SOURCE = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Chamber JPer K</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__CHAMBER_JPER_K = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Lining JPer K</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__LINING_JPER_K = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>To Lining WPer K</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__TO_LINING_WPER_K = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>To Room WPer K</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__TO_ROOM_WPER_K = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Learnt Firings</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN__LEARNT_FIRINGS = NAMED_FEATURE_COUNT + 14;

	/**
	 * The number of structural features of the '<em>Kiln</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN_FEATURE_COUNT = NAMED_FEATURE_COUNT + 15;

	/**
	 * The number of operations of the '<em>Kiln</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int KILN_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.FiringScheduleImpl <em>Firing Schedule</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.FiringScheduleImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getFiringSchedule()
	 * @generated
	 */
	int FIRING_SCHEDULE = 16;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SCHEDULE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SCHEDULE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SCHEDULE__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SCHEDULE__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Purpose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SCHEDULE__PURPOSE = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Segments</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SCHEDULE__SEGMENTS = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SCHEDULE__SOURCE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Firing Schedule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SCHEDULE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Firing Schedule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SCHEDULE_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.FiringSegmentImpl <em>Firing Segment</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.FiringSegmentImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getFiringSegment()
	 * @generated
	 */
	int FIRING_SEGMENT = 17;

	/**
	 * The feature id for the '<em><b>Schedule</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SEGMENT__SCHEDULE = 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SEGMENT__NAME = 1;

	/**
	 * The feature id for the '<em><b>Rate KPer H</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SEGMENT__RATE_KPER_H = 2;

	/**
	 * The feature id for the '<em><b>Target C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SEGMENT__TARGET_C = 3;

	/**
	 * The feature id for the '<em><b>Soak Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SEGMENT__SOAK_MIN = 4;

	/**
	 * The feature id for the '<em><b>Vent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SEGMENT__VENT = 5;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SEGMENT__NOTE = 6;

	/**
	 * The number of structural features of the '<em>Firing Segment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SEGMENT_FEATURE_COUNT = 7;

	/**
	 * The number of operations of the '<em>Firing Segment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_SEGMENT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PriceBookImpl <em>Price Book</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PriceBookImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPriceBook()
	 * @generated
	 */
	int PRICE_BOOK = 18;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BOOK__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BOOK__STUDIO = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Labour Per Hour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BOOK__LABOUR_PER_HOUR = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Energy Per Kwh</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BOOK__ENERGY_PER_KWH = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Overhead Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BOOK__OVERHEAD_SHARE = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Margin Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BOOK__MARGIN_SHARE = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Tax Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BOOK__TAX_SHARE = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Items</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BOOK__ITEMS = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Price Book</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BOOK_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Price Book</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_BOOK_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PriceItemImpl <em>Price Item</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PriceItemImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPriceItem()
	 * @generated
	 */
	int PRICE_ITEM = 19;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_ITEM__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_ITEM__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_ITEM__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Book</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_ITEM__BOOK = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_ITEM__KEY = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_ITEM__UNIT = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_ITEM__PRICE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_ITEM__FROM = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_ITEM__CURRENCY = NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Price Item</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_ITEM_FEATURE_COUNT = NAMED_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Price Item</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRICE_ITEM_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PrinterImpl <em>Printer</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PrinterImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPrinter()
	 * @generated
	 */
	int PRINTER = 20;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Dpi</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__DPI = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Margin Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__MARGIN_MM = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Scale X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__SCALE_X = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Scale Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__SCALE_Y = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__SOURCE = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Skew</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__SKEW = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Measured</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__MEASURED = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Band Periods Mm</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__BAND_PERIODS_MM = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Solid Transmittance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER__SOLID_TRANSMITTANCE = NAMED_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Printer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER_FEATURE_COUNT = NAMED_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Printer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINTER_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.SheetStockImpl <em>Sheet Stock</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.SheetStockImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSheetStock()
	 * @generated
	 */
	int SHEET_STOCK = 21;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_STOCK__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_STOCK__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_STOCK__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_STOCK__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_STOCK__MATERIAL = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Paper</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_STOCK__PAPER = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>In Stock</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_STOCK__IN_STOCK = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Price Per Sheet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_STOCK__PRICE_PER_SHEET = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Sheet Stock</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_STOCK_FEATURE_COUNT = NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Sheet Stock</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_STOCK_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.ToneCalibrationImpl <em>Tone Calibration</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.ToneCalibrationImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getToneCalibration()
	 * @generated
	 */
	int TONE_CALIBRATION = 22;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Mesh</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__MESH = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Paint</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__PAINT = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Printer</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__PRINTER = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__METHOD = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Process Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__PROCESS_KEY = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Lpi</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__LPI = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Dot Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__DOT_MM = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Measured</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__MEASURED = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Readings File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__READINGS_FILE = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Points</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__POINTS = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Superseded By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__SUPERSEDED_BY = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Yule Nielsen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION__YULE_NIELSEN = NAMED_FEATURE_COUNT + 12;

	/**
	 * The number of structural features of the '<em>Tone Calibration</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION_FEATURE_COUNT = NAMED_FEATURE_COUNT + 13;

	/**
	 * The number of operations of the '<em>Tone Calibration</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_CALIBRATION_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.TonePointImpl <em>Tone Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.TonePointImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getTonePoint()
	 * @generated
	 */
	int TONE_POINT = 23;

	/**
	 * The feature id for the '<em><b>Calibration</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_POINT__CALIBRATION = 0;

	/**
	 * The feature id for the '<em><b>Nominal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_POINT__NOMINAL = 1;

	/**
	 * The feature id for the '<em><b>Effective</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_POINT__EFFECTIVE = 2;

	/**
	 * The number of structural features of the '<em>Tone Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_POINT_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Tone Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TONE_POINT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.ProcessSettingImpl <em>Process Setting</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.ProcessSettingImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getProcessSetting()
	 * @generated
	 */
	int PROCESS_SETTING = 24;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Process Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING__PROCESS_KEY = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Toner Side</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING__TONER_SIDE = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Confirmed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING__CONFIRMED = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Press C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING__PRESS_C = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Press Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING__PRESS_MIN = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Cool Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING__COOL_MIN = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING__SOURCE = NAMED_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Process Setting</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING_FEATURE_COUNT = NAMED_FEATURE_COUNT + 8;

	/**
	 * The number of operations of the '<em>Process Setting</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROCESS_SETTING_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PersonImpl <em>Person</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PersonImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPerson()
	 * @generated
	 */
	int PERSON = 25;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Initials</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__INITIALS = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__ROLE = NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Person</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON_FEATURE_COUNT = NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Person</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.SupplierImpl <em>Supplier</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.SupplierImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSupplier()
	 * @generated
	 */
	int SUPPLIER = 26;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER__STUDIO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Contact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER__CONTACT = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Paints</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER__PAINTS = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Glass</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER__GLASS = NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Supplier</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER_FEATURE_COUNT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Supplier</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLIER_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.CommissionImpl <em>Commission</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.CommissionImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getCommission()
	 * @generated
	 */
	int COMMISSION = 27;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__FORMAT_VERSION = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__TITLE = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__NUMBER = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__NOTE = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Units</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__UNITS = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Papers</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__PAPERS = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Join</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__JOIN = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Gap Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__GAP_MM = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Sheet Gap Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__SHEET_GAP_MM = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Client</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__CLIENT = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Site</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__SITE = IDENTIFIED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Milestones</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__MILESTONES = IDENTIFIED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Quotes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__QUOTES = IDENTIFIED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Approvals</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__APPROVALS = IDENTIFIED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Sheets</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__SHEETS = IDENTIFIED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Windows</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__WINDOWS = IDENTIFIED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Studio</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION__STUDIO = IDENTIFIED_FEATURE_COUNT + 16;

	/**
	 * The number of structural features of the '<em>Commission</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 17;

	/**
	 * The number of operations of the '<em>Commission</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMMISSION_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.ClientImpl <em>Client</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.ClientImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getClient()
	 * @generated
	 */
	int CLIENT = 28;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIENT__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIENT__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIENT__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Commission</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIENT__COMMISSION = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Contact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIENT__CONTACT = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Address</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIENT__ADDRESS = NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Client</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIENT_FEATURE_COUNT = NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Client</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIENT_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.SiteImpl <em>Site</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.SiteImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSite()
	 * @generated
	 */
	int SITE = 29;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Commission</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__COMMISSION = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Address</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__ADDRESS = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Access</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__ACCESS = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Distance Km</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__DISTANCE_KM = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Trips</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__TRIPS = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Site</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Site</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.MilestoneImpl <em>Milestone</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.MilestoneImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMilestone()
	 * @generated
	 */
	int MILESTONE = 30;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MILESTONE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MILESTONE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MILESTONE__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Commission</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MILESTONE__COMMISSION = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Due</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MILESTONE__DUE = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Done</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MILESTONE__DONE = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Work Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MILESTONE__WORK_SHARE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Pay Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MILESTONE__PAY_SHARE = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Milestone</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MILESTONE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Milestone</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MILESTONE_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.QuoteImpl <em>Quote</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.QuoteImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getQuote()
	 * @generated
	 */
	int QUOTE = 31;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Commission</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__COMMISSION = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__NUMBER = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__STATE = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Dated</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__DATED = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Valid Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__VALID_UNTIL = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__CURRENCY = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Total</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__TOTAL = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Lines</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__LINES = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Changes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__CHANGES = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE__REASON = NAMED_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Quote</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Quote</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.QuoteLineImpl <em>Quote Line</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.QuoteLineImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getQuoteLine()
	 * @generated
	 */
	int QUOTE_LINE = 32;

	/**
	 * The feature id for the '<em><b>Quote</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE_LINE__QUOTE = 0;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE_LINE__TEXT = 1;

	/**
	 * The feature id for the '<em><b>Source Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE_LINE__SOURCE_KEY = 2;

	/**
	 * The feature id for the '<em><b>Window Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE_LINE__WINDOW_NAME = 3;

	/**
	 * The feature id for the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE_LINE__QUANTITY = 4;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE_LINE__UNIT = 5;

	/**
	 * The feature id for the '<em><b>Unit Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE_LINE__UNIT_PRICE = 6;

	/**
	 * The feature id for the '<em><b>Amount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE_LINE__AMOUNT = 7;

	/**
	 * The number of structural features of the '<em>Quote Line</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE_LINE_FEATURE_COUNT = 8;

	/**
	 * The number of operations of the '<em>Quote Line</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int QUOTE_LINE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.ApprovalImpl <em>Approval</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.ApprovalImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getApproval()
	 * @generated
	 */
	int APPROVAL = 33;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVAL__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVAL__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVAL__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Commission</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVAL__COMMISSION = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVAL__ON = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVAL__BY = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Quote</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVAL__QUOTE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Colourway</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVAL__COLOURWAY = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Approval</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVAL_FEATURE_COUNT = NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Approval</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVAL_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.SheetImpl <em>Sheet</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.SheetImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSheet()
	 * @generated
	 */
	int SHEET = 34;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Commission</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__COMMISSION = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__NUMBER = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Paper</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__PAPER = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__WIDTH_MM = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__HEIGHT_MM = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Margin Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__MARGIN_MM = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Process Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__PROCESS_KEY = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Toner Side</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__TONER_SIDE = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Dpi</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__DPI = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Placements</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__PLACEMENTS = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Files</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__FILES = IDENTIFIED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Content Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__CONTENT_KEY = IDENTIFIED_FEATURE_COUNT + 11;

	/**
	 * The number of structural features of the '<em>Sheet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 12;

	/**
	 * The number of operations of the '<em>Sheet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PlacementImpl <em>Placement</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PlacementImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPlacement()
	 * @generated
	 */
	int PLACEMENT = 35;

	/**
	 * The feature id for the '<em><b>Sheet</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__SHEET = 0;

	/**
	 * The feature id for the '<em><b>Stencil</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__STENCIL = 1;

	/**
	 * The feature id for the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__XMM = 2;

	/**
	 * The feature id for the '<em><b>YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__YMM = 3;

	/**
	 * The feature id for the '<em><b>Rotation Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__ROTATION_DEG = 4;

	/**
	 * The number of structural features of the '<em>Placement</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT_FEATURE_COUNT = 5;

	/**
	 * The number of operations of the '<em>Placement</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.WindowImpl <em>Window</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.WindowImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getWindow()
	 * @generated
	 */
	int WINDOW = 36;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WINDOW__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WINDOW__FORMAT_VERSION = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WINDOW__NAME = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WINDOW__TITLE = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WINDOW__NOTE = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Commission</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WINDOW__COMMISSION = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Opening</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WINDOW__OPENING = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Colourways</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WINDOW__COLOURWAYS = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Chosen</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WINDOW__CHOSEN = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Panels</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WINDOW__PANELS = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Window</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WINDOW_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The number of operations of the '<em>Window</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WINDOW_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.OpeningImpl <em>Opening</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.OpeningImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getOpening()
	 * @generated
	 */
	int OPENING = 37;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Window</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__WINDOW = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__KIND = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Sight Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__SIGHT_WIDTH_MM = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sight Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__SIGHT_HEIGHT_MM = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Tight Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__TIGHT_WIDTH_MM = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Tight Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__TIGHT_HEIGHT_MM = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__COUNT = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Overhead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__OVERHEAD = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>In Door</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__IN_DOOR = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Template File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__TEMPLATE_FILE = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__NOTE = IDENTIFIED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Jamb Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__JAMB_MM = IDENTIFIED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Rise Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__RISE_MM = IDENTIFIED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Top Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__TOP_MM = IDENTIFIED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Right Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__RIGHT_MM = IDENTIFIED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Bottom Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__BOTTOM_MM = IDENTIFIED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Left Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__LEFT_MM = IDENTIFIED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Diagonal Down Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__DIAGONAL_DOWN_MM = IDENTIFIED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Diagonal Up Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__DIAGONAL_UP_MM = IDENTIFIED_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Rebate Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__REBATE_MM = IDENTIFIED_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Clearance Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__CLEARANCE_MM = IDENTIFIED_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Outline</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__OUTLINE = IDENTIFIED_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Bars Mm</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__BARS_MM = IDENTIFIED_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Divisions Mm</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING__DIVISIONS_MM = IDENTIFIED_FEATURE_COUNT + 23;

	/**
	 * The number of structural features of the '<em>Opening</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 24;

	/**
	 * The number of operations of the '<em>Opening</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPENING_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.ColourwayImpl <em>Colourway</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.ColourwayImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getColourway()
	 * @generated
	 */
	int COLOURWAY = 38;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLOURWAY__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLOURWAY__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLOURWAY__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Window</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLOURWAY__WINDOW = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Approved</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLOURWAY__APPROVED = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Approved On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLOURWAY__APPROVED_ON = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Choices</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLOURWAY__CHOICES = NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Colourway</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLOURWAY_FEATURE_COUNT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Colourway</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COLOURWAY_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.GlassChoiceImpl <em>Glass Choice</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.GlassChoiceImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getGlassChoice()
	 * @generated
	 */
	int GLASS_CHOICE = 39;

	/**
	 * The feature id for the '<em><b>Colourway</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_CHOICE__COLOURWAY = 0;

	/**
	 * The feature id for the '<em><b>Piece</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_CHOICE__PIECE = 1;

	/**
	 * The feature id for the '<em><b>Glass</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_CHOICE__GLASS = 2;

	/**
	 * The number of structural features of the '<em>Glass Choice</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_CHOICE_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Glass Choice</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_CHOICE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PanelImpl <em>Panel</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PanelImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPanel()
	 * @generated
	 */
	int PANEL = 40;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Window</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__WINDOW = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__XMM = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__YMM = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Outline</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__OUTLINE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Join</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__JOIN = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Gap Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__GAP_MM = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Join Stock</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__JOIN_STOCK = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Artwork</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__ARTWORK = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Pieces</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__PIECES = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Layers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__LAYERS = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Content Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__CONTENT_KEY = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Edge Allowance Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__EDGE_ALLOWANCE_MM = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Outline Element</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__OUTLINE_ELEMENT = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Mendings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__MENDINGS = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Join Rules</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL__JOIN_RULES = NAMED_FEATURE_COUNT + 14;

	/**
	 * The number of structural features of the '<em>Panel</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL_FEATURE_COUNT = NAMED_FEATURE_COUNT + 15;

	/**
	 * The number of operations of the '<em>Panel</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PANEL_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.ArtworkReferenceImpl <em>Artwork Reference</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.ArtworkReferenceImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getArtworkReference()
	 * @generated
	 */
	int ARTWORK_REFERENCE = 41;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Panel</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__PANEL = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__FILE = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Original Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__ORIGINAL_NAME = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__SHA256 = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__REVISION = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Brought</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__BROUGHT = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__WIDTH_MM = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__HEIGHT_MM = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Scale</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__SCALE = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Roles</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__ROLES = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__PAGE = IDENTIFIED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Roles Confirmed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__ROLES_CONFIRMED = IDENTIFIED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Glass Layers</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__GLASS_LAYERS = IDENTIFIED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Unused Layers</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE__UNUSED_LAYERS = IDENTIFIED_FEATURE_COUNT + 13;

	/**
	 * The number of structural features of the '<em>Artwork Reference</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 14;

	/**
	 * The number of operations of the '<em>Artwork Reference</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_REFERENCE_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.RoleAssignmentImpl <em>Role Assignment</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.RoleAssignmentImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getRoleAssignment()
	 * @generated
	 */
	int ROLE_ASSIGNMENT = 42;

	/**
	 * The feature id for the '<em><b>Artwork</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE_ASSIGNMENT__ARTWORK = 0;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE_ASSIGNMENT__ROLE = 1;

	/**
	 * The feature id for the '<em><b>Art Layer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE_ASSIGNMENT__ART_LAYER = 2;

	/**
	 * The number of structural features of the '<em>Role Assignment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE_ASSIGNMENT_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Role Assignment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE_ASSIGNMENT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PieceImpl <em>Piece</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PieceImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPiece()
	 * @generated
	 */
	int PIECE = 43;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Panel</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__PANEL = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__NUMBER = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Face</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__FACE = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Net</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__NET = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Label XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__LABEL_XMM = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Label YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__LABEL_YMM = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Inradius Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__INRADIUS_MM = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Area Mm2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__AREA_MM2 = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Net Area Mm2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__NET_AREA_MM2 = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Perimeter Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__PERIMETER_MM = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Shape Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__SHAPE_KEY = IDENTIFIED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Problems</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__PROBLEMS = IDENTIFIED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Neighbours</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__NEIGHBOURS = IDENTIFIED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Glass</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__GLASS = IDENTIFIED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Choices</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__CHOICES = IDENTIFIED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__STATE = IDENTIFIED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Retired</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__RETIRED = IDENTIFIED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__NOTE = IDENTIFIED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Group</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__GROUP = IDENTIFIED_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Locked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__LOCKED = IDENTIFIED_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Numbered By Hand</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__NUMBERED_BY_HAND = IDENTIFIED_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Came From</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__CAME_FROM = IDENTIFIED_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Became</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__BECAME = IDENTIFIED_FEATURE_COUNT + 22;

	/**
	 * The number of structural features of the '<em>Piece</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 23;

	/**
	 * The number of operations of the '<em>Piece</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.DesignLayerImpl <em>Design Layer</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.DesignLayerImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getDesignLayer()
	 * @generated
	 */
	int DESIGN_LAYER = 44;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Panel</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__PANEL = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__ROLE = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Art Layer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__ART_LAYER = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Face</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__FACE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Paint</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__PAINT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Medium</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__MEDIUM = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Mesh</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__MESH = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Schedule</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__SCHEDULE = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Firing Order</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__FIRING_ORDER = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Bleed Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__BLEED_MM = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Sight Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__SIGHT_LINE = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Sight Line Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__SIGHT_LINE_MM = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>By Hand</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__BY_HAND = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Recipe</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__RECIPE = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Stencils</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__STENCILS = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__STATE = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Content Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER__CONTENT_KEY = NAMED_FEATURE_COUNT + 16;

	/**
	 * The number of structural features of the '<em>Design Layer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER_FEATURE_COUNT = NAMED_FEATURE_COUNT + 17;

	/**
	 * The number of operations of the '<em>Design Layer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DESIGN_LAYER_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.StencilRecipeImpl <em>Stencil Recipe</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.StencilRecipeImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStencilRecipe()
	 * @generated
	 */
	int STENCIL_RECIPE = 45;

	/**
	 * The feature id for the '<em><b>Layer</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__LAYER = 0;

	/**
	 * The feature id for the '<em><b>Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__METHOD = 1;

	/**
	 * The feature id for the '<em><b>Dpi</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__DPI = 2;

	/**
	 * The feature id for the '<em><b>Lpi</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__LPI = 3;

	/**
	 * The feature id for the '<em><b>Angle Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__ANGLE_DEG = 4;

	/**
	 * The feature id for the '<em><b>Dot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__DOT = 5;

	/**
	 * The feature id for the '<em><b>Dot Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__DOT_MM = 6;

	/**
	 * The feature id for the '<em><b>Filter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__FILTER = 7;

	/**
	 * The feature id for the '<em><b>Seed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__SEED = 8;

	/**
	 * The feature id for the '<em><b>Tone Mode</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__TONE_MODE = 9;

	/**
	 * The feature id for the '<em><b>Tone From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__TONE_FROM = 10;

	/**
	 * The feature id for the '<em><b>Tone To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__TONE_TO = 11;

	/**
	 * The feature id for the '<em><b>Calibration</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__CALIBRATION = 12;

	/**
	 * The feature id for the '<em><b>End Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__END_LOW = 13;

	/**
	 * The feature id for the '<em><b>End High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__END_HIGH = 14;

	/**
	 * The feature id for the '<em><b>End Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__END_RULE = 15;

	/**
	 * The feature id for the '<em><b>Process Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__PROCESS_KEY = 16;

	/**
	 * The feature id for the '<em><b>Mirror</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__MIRROR = 17;

	/**
	 * The feature id for the '<em><b>Open Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__OPEN_MM = 18;

	/**
	 * The feature id for the '<em><b>Bridge Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__BRIDGE_MM = 19;

	/**
	 * The feature id for the '<em><b>Course</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__COURSE = 20;

	/**
	 * The feature id for the '<em><b>Course Layer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__COURSE_LAYER = 21;

	/**
	 * The feature id for the '<em><b>Noise Side</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__NOISE_SIDE = 22;

	/**
	 * The feature id for the '<em><b>Clump</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__CLUMP = 23;

	/**
	 * The feature id for the '<em><b>Supercell</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__SUPERCELL = 24;

	/**
	 * The feature id for the '<em><b>Curve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__CURVE = 25;

	/**
	 * The feature id for the '<em><b>Trap Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__TRAP_MM = 26;

	/**
	 * The feature id for the '<em><b>Mends</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE__MENDS = 27;

	/**
	 * The number of structural features of the '<em>Stencil Recipe</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE_FEATURE_COUNT = 28;

	/**
	 * The number of operations of the '<em>Stencil Recipe</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_RECIPE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.MendedPlaceImpl <em>Mended Place</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.MendedPlaceImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMendedPlace()
	 * @generated
	 */
	int MENDED_PLACE = 73;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.AcceptedMendImpl <em>Accepted Mend</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.AcceptedMendImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getAcceptedMend()
	 * @generated
	 */
	int ACCEPTED_MEND = 74;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.JoinRuleImpl <em>Join Rule</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.JoinRuleImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getJoinRule()
	 * @generated
	 */
	int JOIN_RULE = 75;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.StencilImpl <em>Stencil</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.StencilImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStencil()
	 * @generated
	 */
	int STENCIL = 46;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Layer</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__LAYER = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__NUMBER = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Frame</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__FRAME = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__WIDTH_MM = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__HEIGHT_MM = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Origin XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__ORIGIN_XMM = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Origin YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__ORIGIN_YMM = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Width Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__WIDTH_PX = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Height Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__HEIGHT_PX = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Prints</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__PRINTS = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Pieces</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__PIECES = IDENTIFIED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Files</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__FILES = IDENTIFIED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__SHA256 = IDENTIFIED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Content Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__CONTENT_KEY = IDENTIFIED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Coverage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__COVERAGE = IDENTIFIED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Too Fine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__TOO_FINE = IDENTIFIED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Bridges Lost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__BRIDGES_LOST = IDENTIFIED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Retired</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL__RETIRED = IDENTIFIED_FEATURE_COUNT + 17;

	/**
	 * The number of structural features of the '<em>Stencil</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 18;

	/**
	 * The number of operations of the '<em>Stencil</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_OPERATION_COUNT = IDENTIFIED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.StencilPieceImpl <em>Stencil Piece</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.StencilPieceImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStencilPiece()
	 * @generated
	 */
	int STENCIL_PIECE = 47;

	/**
	 * The feature id for the '<em><b>Stencil</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_PIECE__STENCIL = 0;

	/**
	 * The feature id for the '<em><b>Piece</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_PIECE__PIECE = 1;

	/**
	 * The feature id for the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_PIECE__XMM = 2;

	/**
	 * The feature id for the '<em><b>YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_PIECE__YMM = 3;

	/**
	 * The feature id for the '<em><b>Rotation Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_PIECE__ROTATION_DEG = 4;

	/**
	 * The feature id for the '<em><b>Spot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_PIECE__SPOT = 5;

	/**
	 * The feature id for the '<em><b>Prints</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_PIECE__PRINTS = 6;

	/**
	 * The number of structural features of the '<em>Stencil Piece</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_PIECE_FEATURE_COUNT = 7;

	/**
	 * The number of operations of the '<em>Stencil Piece</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_PIECE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.SettingImpl <em>Setting</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.SettingImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSetting()
	 * @generated
	 */
	int SETTING = 48;

	/**
	 * The feature id for the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTING__KEY = 0;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTING__VALUE = 1;

	/**
	 * The number of structural features of the '<em>Setting</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTING_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Setting</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTING_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.MakingRecordImpl <em>Making Record</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.MakingRecordImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMakingRecord()
	 * @generated
	 */
	int MAKING_RECORD = 49;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD__ID = 0;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD__TIME = 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD__KIND = 2;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD__WHO = 3;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD__WRITER = 4;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD__USED = 5;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD__MADE = 6;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD__SETTINGS = 7;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD__SUPERSEDES = 8;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD__NOTE = 9;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD__FILE = 10;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD__LINE = 11;

	/**
	 * The number of structural features of the '<em>Making Record</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD_FEATURE_COUNT = 12;

	/**
	 * The number of operations of the '<em>Making Record</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MAKING_RECORD_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.ArtworkBroughtImpl <em>Artwork Brought</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.ArtworkBroughtImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getArtworkBrought()
	 * @generated
	 */
	int ARTWORK_BROUGHT = 50;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__WINDOW_ID = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Panel Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__PANEL_ID = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Artwork File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__ARTWORK_FILE = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__SHA256 = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__REVISION = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT__WIDTH_MM = MAKING_RECORD_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Artwork Brought</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Artwork Brought</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ARTWORK_BROUGHT_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PiecesMadeImpl <em>Pieces Made</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PiecesMadeImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPiecesMade()
	 * @generated
	 */
	int PIECES_MADE = 51;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__WINDOW_ID = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Panel Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__PANEL_ID = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Input Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__INPUT_SHA256 = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__SHA256 = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Pieces</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__PIECES = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Files</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE__FILES = MAKING_RECORD_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Pieces Made</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Pieces Made</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECES_MADE_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.StencilMadeImpl <em>Stencil Made</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.StencilMadeImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStencilMade()
	 * @generated
	 */
	int STENCIL_MADE = 52;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__WINDOW_ID = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Layer Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__LAYER_ID = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Stencil Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__STENCIL_ID = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Paint Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__PAINT_ID = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Piece Ids</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__PIECE_IDS = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Input Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__INPUT_SHA256 = MAKING_RECORD_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__SHA256 = MAKING_RECORD_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Coverage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__COVERAGE = MAKING_RECORD_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Too Fine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__TOO_FINE = MAKING_RECORD_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Bridges Lost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__BRIDGES_LOST = MAKING_RECORD_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Width Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__WIDTH_PX = MAKING_RECORD_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Height Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__HEIGHT_PX = MAKING_RECORD_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Files</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE__FILES = MAKING_RECORD_FEATURE_COUNT + 12;

	/**
	 * The number of structural features of the '<em>Stencil Made</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 13;

	/**
	 * The number of operations of the '<em>Stencil Made</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENCIL_MADE_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.SheetMadeImpl <em>Sheet Made</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.SheetMadeImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSheetMade()
	 * @generated
	 */
	int SHEET_MADE = 53;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Sheet Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__SHEET_ID = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__NUMBER = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Stencil Ids</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__STENCIL_IDS = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Input Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__INPUT_SHA256 = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__SHA256 = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Files</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE__FILES = MAKING_RECORD_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Sheet Made</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Sheet Made</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_MADE_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.DocumentMadeImpl <em>Document Made</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.DocumentMadeImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getDocumentMade()
	 * @generated
	 */
	int DOCUMENT_MADE = 54;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>What</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__WHAT = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Files</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE__FILES = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Document Made</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Document Made</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_MADE_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.ScreenLoadImpl <em>Screen Load</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.ScreenLoadImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getScreenLoad()
	 * @generated
	 */
	int SCREEN_LOAD = 55;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Frame Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__FRAME_ID = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Sheet Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__SHEET_ID = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Stencil Ids</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__STENCIL_IDS = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Process Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__PROCESS_KEY = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Press C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__PRESS_C = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Press Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__PRESS_MIN = MAKING_RECORD_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Cool Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD__COOL_MIN = MAKING_RECORD_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Screen Load</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Screen Load</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_LOAD_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.ReclaimImpl <em>Reclaim</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.ReclaimImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getReclaim()
	 * @generated
	 */
	int RECLAIM = 56;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Frame Ids</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__FRAME_IDS = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Screen Load Ids</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__SCREEN_LOAD_IDS = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Cleaner</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM__CLEANER = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Reclaim</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Reclaim</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECLAIM_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PaintMixImpl <em>Paint Mix</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PaintMixImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPaintMix()
	 * @generated
	 */
	int PAINT_MIX = 57;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__NAME = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Paint Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__PAINT_ID = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Lot Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__LOT_ID = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Medium Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__MEDIUM_ID = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Powder G</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__POWDER_G = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Medium G</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX__MEDIUM_G = MAKING_RECORD_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Paint Mix</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Paint Mix</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAINT_MIX_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.PrintRunImpl <em>Print Run</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.PrintRunImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPrintRun()
	 * @generated
	 */
	int PRINT_RUN = 58;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Screen Load Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__SCREEN_LOAD_ID = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Stencil Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__STENCIL_ID = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Mix Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__MIX_ID = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__WINDOW_ID = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Layer Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__LAYER_ID = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Piece Ids</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__PIECE_IDS = MAKING_RECORD_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Pulls</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__PULLS = MAKING_RECORD_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Temperature C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__TEMPERATURE_C = MAKING_RECORD_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Humidity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__HUMIDITY = MAKING_RECORD_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Bed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN__BED = MAKING_RECORD_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Print Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Print Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRINT_RUN_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.FiringImpl <em>Firing</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.FiringImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getFiring()
	 * @generated
	 */
	int FIRING = 59;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__NAME = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Kiln Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__KILN_ID = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Schedule Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__SCHEDULE_ID = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Segments</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__SEGMENTS = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Load</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__LOAD = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Curve File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__CURVE_FILE = MAKING_RECORD_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Curve Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__CURVE_SHA256 = MAKING_RECORD_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Peak C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__PEAK_C = MAKING_RECORD_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Energy Kwh</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING__ENERGY_KWH = MAKING_RECORD_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Firing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 9;

	/**
	 * The number of operations of the '<em>Firing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRING_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.RunSegmentImpl <em>Run Segment</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.RunSegmentImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getRunSegment()
	 * @generated
	 */
	int RUN_SEGMENT = 60;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_SEGMENT__NAME = 0;

	/**
	 * The feature id for the '<em><b>Rate KPer H</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_SEGMENT__RATE_KPER_H = 1;

	/**
	 * The feature id for the '<em><b>Target C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_SEGMENT__TARGET_C = 2;

	/**
	 * The feature id for the '<em><b>Soak Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_SEGMENT__SOAK_MIN = 3;

	/**
	 * The feature id for the '<em><b>Vent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_SEGMENT__VENT = 4;

	/**
	 * The number of structural features of the '<em>Run Segment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_SEGMENT_FEATURE_COUNT = 5;

	/**
	 * The number of operations of the '<em>Run Segment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RUN_SEGMENT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.ShelfPlaceImpl <em>Shelf Place</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.ShelfPlaceImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getShelfPlace()
	 * @generated
	 */
	int SHELF_PLACE = 61;

	/**
	 * The feature id for the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_PLACE__WINDOW_ID = 0;

	/**
	 * The feature id for the '<em><b>Piece Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_PLACE__PIECE_ID = 1;

	/**
	 * The feature id for the '<em><b>Layer Ids</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_PLACE__LAYER_IDS = 2;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_PLACE__PLACE = 3;

	/**
	 * The feature id for the '<em><b>Shelf</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_PLACE__SHELF = 4;

	/**
	 * The feature id for the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_PLACE__XMM = 5;

	/**
	 * The feature id for the '<em><b>YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_PLACE__YMM = 6;

	/**
	 * The feature id for the '<em><b>Rotation Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_PLACE__ROTATION_DEG = 7;

	/**
	 * The number of structural features of the '<em>Shelf Place</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_PLACE_FEATURE_COUNT = 8;

	/**
	 * The number of operations of the '<em>Shelf Place</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_PLACE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.GlazingImpl <em>Glazing</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.GlazingImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getGlazing()
	 * @generated
	 */
	int GLAZING = 62;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__WINDOW_ID = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Panel Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__PANEL_ID = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Piece Ids</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__PIECE_IDS = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Join</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__JOIN = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Mass Kg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING__MASS_KG = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Glazing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Glazing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLAZING_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.FixingImpl <em>Fixing</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.FixingImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getFixing()
	 * @generated
	 */
	int FIXING = 63;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__WINDOW_ID = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Panel Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__PANEL_ID = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING__PLACE = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Fixing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Fixing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIXING_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.DefectImpl <em>Defect</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.DefectImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getDefect()
	 * @generated
	 */
	int DEFECT = 64;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__WINDOW_ID = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Piece Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__PIECE_ID = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Layer Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__LAYER_ID = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Defect Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__DEFECT_KIND = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Found At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__FOUND_AT = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Severity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__SEVERITY = MAKING_RECORD_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__XMM = MAKING_RECORD_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__YMM = MAKING_RECORD_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Photo</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__PHOTO = MAKING_RECORD_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Suspected Cause</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__SUSPECTED_CAUSE = MAKING_RECORD_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Disposition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT__DISPOSITION = MAKING_RECORD_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Defect</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 11;

	/**
	 * The number of operations of the '<em>Defect</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEFECT_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.RemakeImpl <em>Remake</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.RemakeImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getRemake()
	 * @generated
	 */
	int REMAKE = 65;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__WINDOW_ID = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Piece Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__PIECE_ID = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Layer Ids</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__LAYER_IDS = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Defect Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__DEFECT_ID = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE__REASON = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Remake</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Remake</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAKE_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.NoteImpl <em>Note</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.NoteImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getNote()
	 * @generated
	 */
	int NOTE = 66;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__TEXT = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>About Ids</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE__ABOUT_IDS = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Note</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Note</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NOTE_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.CostLineImpl <em>Cost Line</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.CostLineImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getCostLine()
	 * @generated
	 */
	int COST_LINE = 67;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Source Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__SOURCE_KEY = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>What</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__WHAT = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__WINDOW_ID = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Estimate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__ESTIMATE = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__QUANTITY = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__UNIT = MAKING_RECORD_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Unit Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__UNIT_PRICE = MAKING_RECORD_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Amount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__AMOUNT = MAKING_RECORD_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE__CURRENCY = MAKING_RECORD_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Cost Line</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 9;

	/**
	 * The number of operations of the '<em>Cost Line</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_LINE_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.StockMoveImpl <em>Stock Move</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.StockMoveImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStockMove()
	 * @generated
	 */
	int STOCK_MOVE = 68;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Item Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__ITEM_ID = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__QUANTITY = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__UNIT = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE__REASON = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Stock Move</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Stock Move</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_MOVE_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.ApprovedImpl <em>Approved</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.ApprovedImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getApproved()
	 * @generated
	 */
	int APPROVED = 69;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__LINE = MAKING_RECORD__LINE;

	/**
	 * The feature id for the '<em><b>Approval Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__APPROVAL_ID = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Quote Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__QUOTE_ID = MAKING_RECORD_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Colourway Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED__COLOURWAY_ID = MAKING_RECORD_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Approved</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Approved</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int APPROVED_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.OtherRecordImpl <em>Other Record</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.OtherRecordImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getOtherRecord()
	 * @generated
	 */
	int OTHER_RECORD = 70;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD__ID = MAKING_RECORD__ID;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD__TIME = MAKING_RECORD__TIME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD__KIND = MAKING_RECORD__KIND;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD__WHO = MAKING_RECORD__WHO;

	/**
	 * The feature id for the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD__WRITER = MAKING_RECORD__WRITER;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD__USED = MAKING_RECORD__USED;

	/**
	 * The feature id for the '<em><b>Made</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD__MADE = MAKING_RECORD__MADE;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD__SETTINGS = MAKING_RECORD__SETTINGS;

	/**
	 * The feature id for the '<em><b>Supersedes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD__SUPERSEDES = MAKING_RECORD__SUPERSEDES;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD__NOTE = MAKING_RECORD__NOTE;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD__FILE = MAKING_RECORD__FILE;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD__LINE = MAKING_RECORD__LINE;

	/**
	 * The number of structural features of the '<em>Other Record</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD_FEATURE_COUNT = MAKING_RECORD_FEATURE_COUNT + 0;

	/**
	 * The number of operations of the '<em>Other Record</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OTHER_RECORD_OPERATION_COUNT = MAKING_RECORD_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.StockSheetImpl <em>Stock Sheet</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.StockSheetImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStockSheet()
	 * @generated
	 */
	int STOCK_SHEET = 71;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Glass</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET__GLASS = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET__WIDTH_MM = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET__HEIGHT_MM = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Outline</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET__OUTLINE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Grain Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET__GRAIN_DEG = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Offcut</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET__OFFCUT = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Cut From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET__CUT_FROM = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Used Up</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET__USED_UP = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Flaws</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET__FLAWS = NAMED_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Stock Sheet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET_FEATURE_COUNT = NAMED_FEATURE_COUNT + 9;

	/**
	 * The number of operations of the '<em>Stock Sheet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_SHEET_OPERATION_COUNT = NAMED_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.impl.GlassFlawImpl <em>Glass Flaw</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.impl.GlassFlawImpl
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getGlassFlaw()
	 * @generated
	 */
	int GLASS_FLAW = 72;

	/**
	 * The feature id for the '<em><b>Sheet</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_FLAW__SHEET = 0;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_FLAW__KIND = 1;

	/**
	 * The feature id for the '<em><b>Outline</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_FLAW__OUTLINE = 2;

	/**
	 * The number of structural features of the '<em>Glass Flaw</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_FLAW_FEATURE_COUNT = 3;

	/**
	 * The number of operations of the '<em>Glass Flaw</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GLASS_FLAW_OPERATION_COUNT = 0;

	/**
	 * The feature id for the '<em><b>Recipe</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MENDED_PLACE__RECIPE = 0;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MENDED_PLACE__KIND = 1;

	/**
	 * The feature id for the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MENDED_PLACE__XMM = 2;

	/**
	 * The feature id for the '<em><b>YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MENDED_PLACE__YMM = 3;

	/**
	 * The feature id for the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MENDED_PLACE__WIDTH_MM = 4;

	/**
	 * The number of structural features of the '<em>Mended Place</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MENDED_PLACE_FEATURE_COUNT = 5;

	/**
	 * The number of operations of the '<em>Mended Place</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MENDED_PLACE_OPERATION_COUNT = 0;

	/**
	 * The feature id for the '<em><b>Panel</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTED_MEND__PANEL = 0;

	/**
	 * The feature id for the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTED_MEND__KEY = 1;

	/**
	 * The feature id for the '<em><b>Words</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTED_MEND__WORDS = 2;

	/**
	 * The feature id for the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTED_MEND__XMM = 3;

	/**
	 * The feature id for the '<em><b>YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTED_MEND__YMM = 4;

	/**
	 * The number of structural features of the '<em>Accepted Mend</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTED_MEND_FEATURE_COUNT = 5;

	/**
	 * The number of operations of the '<em>Accepted Mend</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCEPTED_MEND_OPERATION_COUNT = 0;

	/**
	 * The feature id for the '<em><b>Panel</b></em>' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_RULE__PANEL = 0;

	/**
	 * The feature id for the '<em><b>Art Layer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_RULE__ART_LAYER = 1;

	/**
	 * The feature id for the '<em><b>First</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_RULE__FIRST = 2;

	/**
	 * The feature id for the '<em><b>Second</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_RULE__SECOND = 3;

	/**
	 * The feature id for the '<em><b>Join</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_RULE__JOIN = 4;

	/**
	 * The feature id for the '<em><b>Join Stock</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_RULE__JOIN_STOCK = 5;

	/**
	 * The feature id for the '<em><b>Gap Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_RULE__GAP_MM = 6;

	/**
	 * The number of structural features of the '<em>Join Rule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_RULE_FEATURE_COUNT = 7;

	/**
	 * The number of operations of the '<em>Join Rule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOIN_RULE_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.UnitSystem <em>Unit System</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.UnitSystem
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getUnitSystem()
	 * @generated
	 */
	int UNIT_SYSTEM = 76;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.LayerRole <em>Layer Role</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.LayerRole
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getLayerRole()
	 * @generated
	 */
	int LAYER_ROLE = 77;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.Face <em>Face</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.Face
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getFace()
	 * @generated
	 */
	int FACE = 78;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.MakingState <em>Making State</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.MakingState
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMakingState()
	 * @generated
	 */
	int MAKING_STATE = 79;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.JoinKind <em>Join Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.JoinKind
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getJoinKind()
	 * @generated
	 */
	int JOIN_KIND = 80;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.OpeningKind <em>Opening Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.OpeningKind
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getOpeningKind()
	 * @generated
	 */
	int OPENING_KIND = 81;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.PaintKind <em>Paint Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.PaintKind
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPaintKind()
	 * @generated
	 */
	int PAINT_KIND = 82;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.MediumBase <em>Medium Base</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.MediumBase
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMediumBase()
	 * @generated
	 */
	int MEDIUM_BASE = 83;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.SheetMaterial <em>Sheet Material</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.SheetMaterial
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSheetMaterial()
	 * @generated
	 */
	int SHEET_MATERIAL = 84;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.TonerSide <em>Toner Side</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.TonerSide
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getTonerSide()
	 * @generated
	 */
	int TONER_SIDE = 85;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.SightLineRule <em>Sight Line Rule</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.SightLineRule
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSightLineRule()
	 * @generated
	 */
	int SIGHT_LINE_RULE = 86;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.ToneMode <em>Tone Mode</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.ToneMode
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getToneMode()
	 * @generated
	 */
	int TONE_MODE = 87;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.MirrorRule <em>Mirror Rule</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.MirrorRule
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMirrorRule()
	 * @generated
	 */
	int MIRROR_RULE = 88;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.EndRule <em>End Rule</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.EndRule
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getEndRule()
	 * @generated
	 */
	int END_RULE = 89;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.MendKind <em>Mend Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.MendKind
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMendKind()
	 * @generated
	 */
	int MEND_KIND = 92;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.QuoteState <em>Quote State</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.QuoteState
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getQuoteState()
	 * @generated
	 */
	int QUOTE_STATE = 90;

	/**
	 * The meta object id for the '{@link saddlebar.model.commission.Disposition <em>Disposition</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.commission.Disposition
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getDisposition()
	 * @generated
	 */
	int DISPOSITION = 91;

	/**
	 * The meta object id for the '<em>Moment</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.Instant
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMoment()
	 * @generated
	 */
	int MOMENT = 93;

	/**
	 * The meta object id for the '<em>Day</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.LocalDate
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getDay()
	 * @generated
	 */
	int DAY = 94;

	/**
	 * The meta object id for the '<em>Outline</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see saddlebar.model.art.OutlineMm
	 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getOutline()
	 * @generated
	 */
	int OUTLINE = 95;


	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Identified <em>Identified</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Identified</em>'.
	 * @see saddlebar.model.commission.Identified
	 * @generated
	 */
	EClass getIdentified();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Identified#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see saddlebar.model.commission.Identified#getId()
	 * @see #getIdentified()
	 * @generated
	 */
	EAttribute getIdentified_Id();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Named <em>Named</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Named</em>'.
	 * @see saddlebar.model.commission.Named
	 * @generated
	 */
	EClass getNamed();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Named#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see saddlebar.model.commission.Named#getName()
	 * @see #getNamed()
	 * @generated
	 */
	EAttribute getNamed_Name();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Named#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see saddlebar.model.commission.Named#getNote()
	 * @see #getNamed()
	 * @generated
	 */
	EAttribute getNamed_Note();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.MadeFile <em>Made File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Made File</em>'.
	 * @see saddlebar.model.commission.MadeFile
	 * @generated
	 */
	EClass getMadeFile();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MadeFile#getWhat <em>What</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>What</em>'.
	 * @see saddlebar.model.commission.MadeFile#getWhat()
	 * @see #getMadeFile()
	 * @generated
	 */
	EAttribute getMadeFile_What();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MadeFile#getFile <em>File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>File</em>'.
	 * @see saddlebar.model.commission.MadeFile#getFile()
	 * @see #getMadeFile()
	 * @generated
	 */
	EAttribute getMadeFile_File();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MadeFile#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see saddlebar.model.commission.MadeFile#getSha256()
	 * @see #getMadeFile()
	 * @generated
	 */
	EAttribute getMadeFile_Sha256();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Studio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Studio</em>'.
	 * @see saddlebar.model.commission.Studio
	 * @generated
	 */
	EClass getStudio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Studio#getFormatVersion <em>Format Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format Version</em>'.
	 * @see saddlebar.model.commission.Studio#getFormatVersion()
	 * @see #getStudio()
	 * @generated
	 */
	EAttribute getStudio_FormatVersion();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Studio#getUnits <em>Units</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Units</em>'.
	 * @see saddlebar.model.commission.Studio#getUnits()
	 * @see #getStudio()
	 * @generated
	 */
	EAttribute getStudio_Units();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Studio#getCurrency <em>Currency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Currency</em>'.
	 * @see saddlebar.model.commission.Studio#getCurrency()
	 * @see #getStudio()
	 * @generated
	 */
	EAttribute getStudio_Currency();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getPapers <em>Papers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Papers</em>'.
	 * @see saddlebar.model.commission.Studio#getPapers()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Papers();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getMeshes <em>Meshes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Meshes</em>'.
	 * @see saddlebar.model.commission.Studio#getMeshes()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Meshes();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getFrames <em>Frames</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Frames</em>'.
	 * @see saddlebar.model.commission.Studio#getFrames()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Frames();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getPaints <em>Paints</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Paints</em>'.
	 * @see saddlebar.model.commission.Studio#getPaints()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Paints();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getMedia <em>Media</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Media</em>'.
	 * @see saddlebar.model.commission.Studio#getMedia()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Media();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getGlass <em>Glass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Glass</em>'.
	 * @see saddlebar.model.commission.Studio#getGlass()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Glass();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getJoins <em>Joins</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Joins</em>'.
	 * @see saddlebar.model.commission.Studio#getJoins()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Joins();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getSolders <em>Solders</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Solders</em>'.
	 * @see saddlebar.model.commission.Studio#getSolders()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Solders();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getBars <em>Bars</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bars</em>'.
	 * @see saddlebar.model.commission.Studio#getBars()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Bars();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getKilns <em>Kilns</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Kilns</em>'.
	 * @see saddlebar.model.commission.Studio#getKilns()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Kilns();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getSchedules <em>Schedules</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Schedules</em>'.
	 * @see saddlebar.model.commission.Studio#getSchedules()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Schedules();

	/**
	 * Returns the meta object for the containment reference '{@link saddlebar.model.commission.Studio#getPriceBook <em>Price Book</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Price Book</em>'.
	 * @see saddlebar.model.commission.Studio#getPriceBook()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_PriceBook();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getPrinters <em>Printers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Printers</em>'.
	 * @see saddlebar.model.commission.Studio#getPrinters()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Printers();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getSheetStock <em>Sheet Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sheet Stock</em>'.
	 * @see saddlebar.model.commission.Studio#getSheetStock()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_SheetStock();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getCalibrations <em>Calibrations</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Calibrations</em>'.
	 * @see saddlebar.model.commission.Studio#getCalibrations()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Calibrations();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getProcesses <em>Processes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Processes</em>'.
	 * @see saddlebar.model.commission.Studio#getProcesses()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Processes();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getPeople <em>People</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>People</em>'.
	 * @see saddlebar.model.commission.Studio#getPeople()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_People();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getSuppliers <em>Suppliers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Suppliers</em>'.
	 * @see saddlebar.model.commission.Studio#getSuppliers()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Suppliers();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Studio#getCommissions <em>Commissions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Commissions</em>'.
	 * @see saddlebar.model.commission.Studio#getCommissions()
	 * @see #getStudio()
	 * @generated
	 */
	EReference getStudio_Commissions();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Studio#getAddress <em>Address</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Address</em>'.
	 * @see saddlebar.model.commission.Studio#getAddress()
	 * @see #getStudio()
	 * @generated
	 */
	EAttribute getStudio_Address();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Studio#getContact <em>Contact</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contact</em>'.
	 * @see saddlebar.model.commission.Studio#getContact()
	 * @see #getStudio()
	 * @generated
	 */
	EAttribute getStudio_Contact();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Studio#getMarkFile <em>Mark File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mark File</em>'.
	 * @see saddlebar.model.commission.Studio#getMarkFile()
	 * @see #getStudio()
	 * @generated
	 */
	EAttribute getStudio_MarkFile();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Studio#getAccent <em>Accent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Accent</em>'.
	 * @see saddlebar.model.commission.Studio#getAccent()
	 * @see #getStudio()
	 * @generated
	 */
	EAttribute getStudio_Accent();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Studio#getTerms <em>Terms</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Terms</em>'.
	 * @see saddlebar.model.commission.Studio#getTerms()
	 * @see #getStudio()
	 * @generated
	 */
	EAttribute getStudio_Terms();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.JoinedCommission <em>Joined Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Joined Commission</em>'.
	 * @see saddlebar.model.commission.JoinedCommission
	 * @generated
	 */
	EClass getJoinedCommission();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.JoinedCommission#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.JoinedCommission#getStudio()
	 * @see #getJoinedCommission()
	 * @generated
	 */
	EReference getJoinedCommission_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinedCommission#getFolder <em>Folder</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Folder</em>'.
	 * @see saddlebar.model.commission.JoinedCommission#getFolder()
	 * @see #getJoinedCommission()
	 * @generated
	 */
	EAttribute getJoinedCommission_Folder();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinedCommission#getCommissionId <em>Commission Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Commission Id</em>'.
	 * @see saddlebar.model.commission.JoinedCommission#getCommissionId()
	 * @see #getJoinedCommission()
	 * @generated
	 */
	EAttribute getJoinedCommission_CommissionId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinedCommission#getJoined <em>Joined</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Joined</em>'.
	 * @see saddlebar.model.commission.JoinedCommission#getJoined()
	 * @see #getJoinedCommission()
	 * @generated
	 */
	EAttribute getJoinedCommission_Joined();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.PaperSize <em>Paper Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Paper Size</em>'.
	 * @see saddlebar.model.commission.PaperSize
	 * @generated
	 */
	EClass getPaperSize();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.PaperSize#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.PaperSize#getStudio()
	 * @see #getPaperSize()
	 * @generated
	 */
	EReference getPaperSize_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaperSize#getWidthMm <em>Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width Mm</em>'.
	 * @see saddlebar.model.commission.PaperSize#getWidthMm()
	 * @see #getPaperSize()
	 * @generated
	 */
	EAttribute getPaperSize_WidthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaperSize#getHeightMm <em>Height Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Mm</em>'.
	 * @see saddlebar.model.commission.PaperSize#getHeightMm()
	 * @see #getPaperSize()
	 * @generated
	 */
	EAttribute getPaperSize_HeightMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaperSize#isInUse <em>In Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>In Use</em>'.
	 * @see saddlebar.model.commission.PaperSize#isInUse()
	 * @see #getPaperSize()
	 * @generated
	 */
	EAttribute getPaperSize_InUse();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaperSize#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see saddlebar.model.commission.PaperSize#getSource()
	 * @see #getPaperSize()
	 * @generated
	 */
	EAttribute getPaperSize_Source();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Mesh <em>Mesh</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Mesh</em>'.
	 * @see saddlebar.model.commission.Mesh
	 * @generated
	 */
	EClass getMesh();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Mesh#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.Mesh#getStudio()
	 * @see #getMesh()
	 * @generated
	 */
	EReference getMesh_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Mesh#getThreadsPerInch <em>Threads Per Inch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Threads Per Inch</em>'.
	 * @see saddlebar.model.commission.Mesh#getThreadsPerInch()
	 * @see #getMesh()
	 * @generated
	 */
	EAttribute getMesh_ThreadsPerInch();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Mesh#getThreadUm <em>Thread Um</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thread Um</em>'.
	 * @see saddlebar.model.commission.Mesh#getThreadUm()
	 * @see #getMesh()
	 * @generated
	 */
	EAttribute getMesh_ThreadUm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Mesh#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see saddlebar.model.commission.Mesh#getSource()
	 * @see #getMesh()
	 * @generated
	 */
	EAttribute getMesh_Source();

	/**
	 * Returns the meta object for the reference list '{@link saddlebar.model.commission.Mesh#getFrames <em>Frames</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Frames</em>'.
	 * @see saddlebar.model.commission.Mesh#getFrames()
	 * @see #getMesh()
	 * @generated
	 */
	EReference getMesh_Frames();

	/**
	 * Returns the meta object for the reference list '{@link saddlebar.model.commission.Mesh#getCalibrations <em>Calibrations</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Calibrations</em>'.
	 * @see saddlebar.model.commission.Mesh#getCalibrations()
	 * @see #getMesh()
	 * @generated
	 */
	EReference getMesh_Calibrations();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.ScreenFrame <em>Screen Frame</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Screen Frame</em>'.
	 * @see saddlebar.model.commission.ScreenFrame
	 * @generated
	 */
	EClass getScreenFrame();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.ScreenFrame#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.ScreenFrame#getStudio()
	 * @see #getScreenFrame()
	 * @generated
	 */
	EReference getScreenFrame_Studio();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.ScreenFrame#getMesh <em>Mesh</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Mesh</em>'.
	 * @see saddlebar.model.commission.ScreenFrame#getMesh()
	 * @see #getScreenFrame()
	 * @generated
	 */
	EReference getScreenFrame_Mesh();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ScreenFrame#getImageWidthMm <em>Image Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Image Width Mm</em>'.
	 * @see saddlebar.model.commission.ScreenFrame#getImageWidthMm()
	 * @see #getScreenFrame()
	 * @generated
	 */
	EAttribute getScreenFrame_ImageWidthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ScreenFrame#getImageHeightMm <em>Image Height Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Image Height Mm</em>'.
	 * @see saddlebar.model.commission.ScreenFrame#getImageHeightMm()
	 * @see #getScreenFrame()
	 * @generated
	 */
	EAttribute getScreenFrame_ImageHeightMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ScreenFrame#getSqueegeeMarginMm <em>Squeegee Margin Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Squeegee Margin Mm</em>'.
	 * @see saddlebar.model.commission.ScreenFrame#getSqueegeeMarginMm()
	 * @see #getScreenFrame()
	 * @generated
	 */
	EAttribute getScreenFrame_SqueegeeMarginMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ScreenFrame#getMeshTurnDeg <em>Mesh Turn Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mesh Turn Deg</em>'.
	 * @see saddlebar.model.commission.ScreenFrame#getMeshTurnDeg()
	 * @see #getScreenFrame()
	 * @generated
	 */
	EAttribute getScreenFrame_MeshTurnDeg();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ScreenFrame#isOutOfUse <em>Out Of Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Out Of Use</em>'.
	 * @see saddlebar.model.commission.ScreenFrame#isOutOfUse()
	 * @see #getScreenFrame()
	 * @generated
	 */
	EAttribute getScreenFrame_OutOfUse();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Paint <em>Paint</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Paint</em>'.
	 * @see saddlebar.model.commission.Paint
	 * @generated
	 */
	EClass getPaint();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Paint#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.Paint#getStudio()
	 * @see #getPaint()
	 * @generated
	 */
	EReference getPaint_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#getFamily <em>Family</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Family</em>'.
	 * @see saddlebar.model.commission.Paint#getFamily()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Family();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see saddlebar.model.commission.Paint#getKind()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Kind();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#getColour <em>Colour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Colour</em>'.
	 * @see saddlebar.model.commission.Paint#getColour()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Colour();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#getSolidTransmittance <em>Solid Transmittance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Solid Transmittance</em>'.
	 * @see saddlebar.model.commission.Paint#getSolidTransmittance()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_SolidTransmittance();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#getDensityGPerCm3 <em>Density GPer Cm3</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Density GPer Cm3</em>'.
	 * @see saddlebar.model.commission.Paint#getDensityGPerCm3()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_DensityGPerCm3();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#getMaturingFromC <em>Maturing From C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maturing From C</em>'.
	 * @see saddlebar.model.commission.Paint#getMaturingFromC()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_MaturingFromC();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#getMaturingToC <em>Maturing To C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maturing To C</em>'.
	 * @see saddlebar.model.commission.Paint#getMaturingToC()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_MaturingToC();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#getPowderToMedium <em>Powder To Medium</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Powder To Medium</em>'.
	 * @see saddlebar.model.commission.Paint#getPowderToMedium()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_PowderToMedium();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#isContainsLead <em>Contains Lead</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contains Lead</em>'.
	 * @see saddlebar.model.commission.Paint#isContainsLead()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_ContainsLead();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#isContainsCadmium <em>Contains Cadmium</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contains Cadmium</em>'.
	 * @see saddlebar.model.commission.Paint#isContainsCadmium()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_ContainsCadmium();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#isGoldBearing <em>Gold Bearing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gold Bearing</em>'.
	 * @see saddlebar.model.commission.Paint#isGoldBearing()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_GoldBearing();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#getPricePerKg <em>Price Per Kg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price Per Kg</em>'.
	 * @see saddlebar.model.commission.Paint#getPricePerKg()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_PricePerKg();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see saddlebar.model.commission.Paint#getSource()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Source();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.Paint#getMedium <em>Medium</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Medium</em>'.
	 * @see saddlebar.model.commission.Paint#getMedium()
	 * @see #getPaint()
	 * @generated
	 */
	EReference getPaint_Medium();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.Paint#getSupplier <em>Supplier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Supplier</em>'.
	 * @see saddlebar.model.commission.Paint#getSupplier()
	 * @see #getPaint()
	 * @generated
	 */
	EReference getPaint_Supplier();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Paint#getLots <em>Lots</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lots</em>'.
	 * @see saddlebar.model.commission.Paint#getLots()
	 * @see #getPaint()
	 * @generated
	 */
	EReference getPaint_Lots();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Paint#getTransmittance <em>Transmittance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Transmittance</em>'.
	 * @see saddlebar.model.commission.Paint#getTransmittance()
	 * @see #getPaint()
	 * @generated
	 */
	EAttribute getPaint_Transmittance();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.PaintLot <em>Paint Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Paint Lot</em>'.
	 * @see saddlebar.model.commission.PaintLot
	 * @generated
	 */
	EClass getPaintLot();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.PaintLot#getPaint <em>Paint</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Paint</em>'.
	 * @see saddlebar.model.commission.PaintLot#getPaint()
	 * @see #getPaintLot()
	 * @generated
	 */
	EReference getPaintLot_Paint();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaintLot#getReceived <em>Received</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Received</em>'.
	 * @see saddlebar.model.commission.PaintLot#getReceived()
	 * @see #getPaintLot()
	 * @generated
	 */
	EAttribute getPaintLot_Received();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaintLot#getMassG <em>Mass G</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass G</em>'.
	 * @see saddlebar.model.commission.PaintLot#getMassG()
	 * @see #getPaintLot()
	 * @generated
	 */
	EAttribute getPaintLot_MassG();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaintLot#getPricePerKg <em>Price Per Kg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price Per Kg</em>'.
	 * @see saddlebar.model.commission.PaintLot#getPricePerKg()
	 * @see #getPaintLot()
	 * @generated
	 */
	EAttribute getPaintLot_PricePerKg();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Medium <em>Medium</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Medium</em>'.
	 * @see saddlebar.model.commission.Medium
	 * @generated
	 */
	EClass getMedium();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Medium#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.Medium#getStudio()
	 * @see #getMedium()
	 * @generated
	 */
	EReference getMedium_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Medium#getBase <em>Base</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Base</em>'.
	 * @see saddlebar.model.commission.Medium#getBase()
	 * @see #getMedium()
	 * @generated
	 */
	EAttribute getMedium_Base();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Medium#getDensityGPerCm3 <em>Density GPer Cm3</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Density GPer Cm3</em>'.
	 * @see saddlebar.model.commission.Medium#getDensityGPerCm3()
	 * @see #getMedium()
	 * @generated
	 */
	EAttribute getMedium_DensityGPerCm3();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Medium#getPricePerKg <em>Price Per Kg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price Per Kg</em>'.
	 * @see saddlebar.model.commission.Medium#getPricePerKg()
	 * @see #getMedium()
	 * @generated
	 */
	EAttribute getMedium_PricePerKg();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Medium#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see saddlebar.model.commission.Medium#getSource()
	 * @see #getMedium()
	 * @generated
	 */
	EAttribute getMedium_Source();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.GlassStock <em>Glass Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Glass Stock</em>'.
	 * @see saddlebar.model.commission.GlassStock
	 * @generated
	 */
	EClass getGlassStock();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.GlassStock#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.GlassStock#getStudio()
	 * @see #getGlassStock()
	 * @generated
	 */
	EReference getGlassStock_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getFamily <em>Family</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Family</em>'.
	 * @see saddlebar.model.commission.GlassStock#getFamily()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_Family();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getColour <em>Colour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Colour</em>'.
	 * @see saddlebar.model.commission.GlassStock#getColour()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_Colour();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getThicknessMm <em>Thickness Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness Mm</em>'.
	 * @see saddlebar.model.commission.GlassStock#getThicknessMm()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_ThicknessMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#isTextured <em>Textured</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Textured</em>'.
	 * @see saddlebar.model.commission.GlassStock#isTextured()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_Textured();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#isGrained <em>Grained</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Grained</em>'.
	 * @see saddlebar.model.commission.GlassStock#isGrained()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_Grained();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#isOpal <em>Opal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Opal</em>'.
	 * @see saddlebar.model.commission.GlassStock#isOpal()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_Opal();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getDensityKgPerM3 <em>Density Kg Per M3</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Density Kg Per M3</em>'.
	 * @see saddlebar.model.commission.GlassStock#getDensityKgPerM3()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_DensityKgPerM3();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getHeatModel <em>Heat Model</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Heat Model</em>'.
	 * @see saddlebar.model.commission.GlassStock#getHeatModel()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_HeatModel();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getSheetWidthMm <em>Sheet Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Width Mm</em>'.
	 * @see saddlebar.model.commission.GlassStock#getSheetWidthMm()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_SheetWidthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getSheetHeightMm <em>Sheet Height Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Height Mm</em>'.
	 * @see saddlebar.model.commission.GlassStock#getSheetHeightMm()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_SheetHeightMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getStockM2 <em>Stock M2</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stock M2</em>'.
	 * @see saddlebar.model.commission.GlassStock#getStockM2()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_StockM2();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getPricePerM2 <em>Price Per M2</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price Per M2</em>'.
	 * @see saddlebar.model.commission.GlassStock#getPricePerM2()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_PricePerM2();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see saddlebar.model.commission.GlassStock#getSource()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_Source();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.GlassStock#getSupplier <em>Supplier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Supplier</em>'.
	 * @see saddlebar.model.commission.GlassStock#getSupplier()
	 * @see #getGlassStock()
	 * @generated
	 */
	EReference getGlassStock_Supplier();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getViscosityA <em>Viscosity A</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Viscosity A</em>'.
	 * @see saddlebar.model.commission.GlassStock#getViscosityA()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_ViscosityA();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getViscosityBK <em>Viscosity BK</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Viscosity BK</em>'.
	 * @see saddlebar.model.commission.GlassStock#getViscosityBK()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_ViscosityBK();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getViscosityT0C <em>Viscosity T0C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Viscosity T0C</em>'.
	 * @see saddlebar.model.commission.GlassStock#getViscosityT0C()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_ViscosityT0C();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getExpansionPerMillionK <em>Expansion Per Million K</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Expansion Per Million K</em>'.
	 * @see saddlebar.model.commission.GlassStock#getExpansionPerMillionK()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_ExpansionPerMillionK();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getMeasuredMm <em>Measured Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measured Mm</em>'.
	 * @see saddlebar.model.commission.GlassStock#getMeasuredMm()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_MeasuredMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getTransmittance <em>Transmittance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Transmittance</em>'.
	 * @see saddlebar.model.commission.GlassStock#getTransmittance()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_Transmittance();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.GlassStock#getSheets <em>Sheets</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sheets</em>'.
	 * @see saddlebar.model.commission.GlassStock#getSheets()
	 * @see #getGlassStock()
	 * @generated
	 */
	EReference getGlassStock_Sheets();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getNarrowMm <em>Narrow Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Narrow Mm</em>'.
	 * @see saddlebar.model.commission.GlassStock#getNarrowMm()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_NarrowMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getNeedleDeg <em>Needle Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Needle Deg</em>'.
	 * @see saddlebar.model.commission.GlassStock#getNeedleDeg()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_NeedleDeg();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getInsideCurve <em>Inside Curve</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inside Curve</em>'.
	 * @see saddlebar.model.commission.GlassStock#getInsideCurve()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_InsideCurve();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassStock#getInsideRadiusMm <em>Inside Radius Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inside Radius Mm</em>'.
	 * @see saddlebar.model.commission.GlassStock#getInsideRadiusMm()
	 * @see #getGlassStock()
	 * @generated
	 */
	EAttribute getGlassStock_InsideRadiusMm();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.JoinStock <em>Join Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Join Stock</em>'.
	 * @see saddlebar.model.commission.JoinStock
	 * @generated
	 */
	EClass getJoinStock();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.JoinStock#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.JoinStock#getStudio()
	 * @see #getJoinStock()
	 * @generated
	 */
	EReference getJoinStock_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinStock#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see saddlebar.model.commission.JoinStock#getKind()
	 * @see #getJoinStock()
	 * @generated
	 */
	EAttribute getJoinStock_Kind();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinStock#getThicknessUm <em>Thickness Um</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness Um</em>'.
	 * @see saddlebar.model.commission.JoinStock#getThicknessUm()
	 * @see #getJoinStock()
	 * @generated
	 */
	EAttribute getJoinStock_ThicknessUm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinStock#getWidthMm <em>Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width Mm</em>'.
	 * @see saddlebar.model.commission.JoinStock#getWidthMm()
	 * @see #getJoinStock()
	 * @generated
	 */
	EAttribute getJoinStock_WidthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinStock#getHeartMm <em>Heart Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Heart Mm</em>'.
	 * @see saddlebar.model.commission.JoinStock#getHeartMm()
	 * @see #getJoinStock()
	 * @generated
	 */
	EAttribute getJoinStock_HeartMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinStock#getFaceMm <em>Face Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Face Mm</em>'.
	 * @see saddlebar.model.commission.JoinStock#getFaceMm()
	 * @see #getJoinStock()
	 * @generated
	 */
	EAttribute getJoinStock_FaceMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinStock#getMassGPerM <em>Mass GPer M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass GPer M</em>'.
	 * @see saddlebar.model.commission.JoinStock#getMassGPerM()
	 * @see #getJoinStock()
	 * @generated
	 */
	EAttribute getJoinStock_MassGPerM();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinStock#getPricePerM <em>Price Per M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price Per M</em>'.
	 * @see saddlebar.model.commission.JoinStock#getPricePerM()
	 * @see #getJoinStock()
	 * @generated
	 */
	EAttribute getJoinStock_PricePerM();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinStock#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see saddlebar.model.commission.JoinStock#getSource()
	 * @see #getJoinStock()
	 * @generated
	 */
	EAttribute getJoinStock_Source();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinStock#getSoldLengthMm <em>Sold Length Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sold Length Mm</em>'.
	 * @see saddlebar.model.commission.JoinStock#getSoldLengthMm()
	 * @see #getJoinStock()
	 * @generated
	 */
	EAttribute getJoinStock_SoldLengthMm();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.SolderStock <em>Solder Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Solder Stock</em>'.
	 * @see saddlebar.model.commission.SolderStock
	 * @generated
	 */
	EClass getSolderStock();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.SolderStock#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.SolderStock#getStudio()
	 * @see #getSolderStock()
	 * @generated
	 */
	EReference getSolderStock_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SolderStock#getTinShare <em>Tin Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tin Share</em>'.
	 * @see saddlebar.model.commission.SolderStock#getTinShare()
	 * @see #getSolderStock()
	 * @generated
	 */
	EAttribute getSolderStock_TinShare();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SolderStock#isContainsLead <em>Contains Lead</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contains Lead</em>'.
	 * @see saddlebar.model.commission.SolderStock#isContainsLead()
	 * @see #getSolderStock()
	 * @generated
	 */
	EAttribute getSolderStock_ContainsLead();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SolderStock#getDensityGPerCm3 <em>Density GPer Cm3</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Density GPer Cm3</em>'.
	 * @see saddlebar.model.commission.SolderStock#getDensityGPerCm3()
	 * @see #getSolderStock()
	 * @generated
	 */
	EAttribute getSolderStock_DensityGPerCm3();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SolderStock#getPricePerKg <em>Price Per Kg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price Per Kg</em>'.
	 * @see saddlebar.model.commission.SolderStock#getPricePerKg()
	 * @see #getSolderStock()
	 * @generated
	 */
	EAttribute getSolderStock_PricePerKg();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SolderStock#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see saddlebar.model.commission.SolderStock#getSource()
	 * @see #getSolderStock()
	 * @generated
	 */
	EAttribute getSolderStock_Source();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.BarStock <em>Bar Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bar Stock</em>'.
	 * @see saddlebar.model.commission.BarStock
	 * @generated
	 */
	EClass getBarStock();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.BarStock#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.BarStock#getStudio()
	 * @see #getBarStock()
	 * @generated
	 */
	EReference getBarStock_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.BarStock#getWidthMm <em>Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width Mm</em>'.
	 * @see saddlebar.model.commission.BarStock#getWidthMm()
	 * @see #getBarStock()
	 * @generated
	 */
	EAttribute getBarStock_WidthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.BarStock#getDepthMm <em>Depth Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depth Mm</em>'.
	 * @see saddlebar.model.commission.BarStock#getDepthMm()
	 * @see #getBarStock()
	 * @generated
	 */
	EAttribute getBarStock_DepthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.BarStock#isRound <em>Round</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Round</em>'.
	 * @see saddlebar.model.commission.BarStock#isRound()
	 * @see #getBarStock()
	 * @generated
	 */
	EAttribute getBarStock_Round();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.BarStock#getPricePerM <em>Price Per M</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price Per M</em>'.
	 * @see saddlebar.model.commission.BarStock#getPricePerM()
	 * @see #getBarStock()
	 * @generated
	 */
	EAttribute getBarStock_PricePerM();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.BarStock#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see saddlebar.model.commission.BarStock#getSource()
	 * @see #getBarStock()
	 * @generated
	 */
	EAttribute getBarStock_Source();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.BarStock#getSoldLengthMm <em>Sold Length Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sold Length Mm</em>'.
	 * @see saddlebar.model.commission.BarStock#getSoldLengthMm()
	 * @see #getBarStock()
	 * @generated
	 */
	EAttribute getBarStock_SoldLengthMm();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Kiln <em>Kiln</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Kiln</em>'.
	 * @see saddlebar.model.commission.Kiln
	 * @generated
	 */
	EClass getKiln();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Kiln#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.Kiln#getStudio()
	 * @see #getKiln()
	 * @generated
	 */
	EReference getKiln_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getShelfWidthMm <em>Shelf Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shelf Width Mm</em>'.
	 * @see saddlebar.model.commission.Kiln#getShelfWidthMm()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_ShelfWidthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getShelfDepthMm <em>Shelf Depth Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shelf Depth Mm</em>'.
	 * @see saddlebar.model.commission.Kiln#getShelfDepthMm()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_ShelfDepthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getShelves <em>Shelves</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shelves</em>'.
	 * @see saddlebar.model.commission.Kiln#getShelves()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_Shelves();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getMaxC <em>Max C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Max C</em>'.
	 * @see saddlebar.model.commission.Kiln#getMaxC()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_MaxC();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getMaxRateKPerH <em>Max Rate KPer H</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Max Rate KPer H</em>'.
	 * @see saddlebar.model.commission.Kiln#getMaxRateKPerH()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_MaxRateKPerH();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getNaturalFallKPerH <em>Natural Fall KPer H</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Natural Fall KPer H</em>'.
	 * @see saddlebar.model.commission.Kiln#getNaturalFallKPerH()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_NaturalFallKPerH();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getPowerKw <em>Power Kw</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Power Kw</em>'.
	 * @see saddlebar.model.commission.Kiln#getPowerKw()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_PowerKw();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getOffsetK <em>Offset K</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Offset K</em>'.
	 * @see saddlebar.model.commission.Kiln#getOffsetK()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_OffsetK();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see saddlebar.model.commission.Kiln#getSource()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_Source();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getChamberJPerK <em>Chamber JPer K</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Chamber JPer K</em>'.
	 * @see saddlebar.model.commission.Kiln#getChamberJPerK()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_ChamberJPerK();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getLiningJPerK <em>Lining JPer K</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lining JPer K</em>'.
	 * @see saddlebar.model.commission.Kiln#getLiningJPerK()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_LiningJPerK();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getToLiningWPerK <em>To Lining WPer K</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To Lining WPer K</em>'.
	 * @see saddlebar.model.commission.Kiln#getToLiningWPerK()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_ToLiningWPerK();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getToRoomWPerK <em>To Room WPer K</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To Room WPer K</em>'.
	 * @see saddlebar.model.commission.Kiln#getToRoomWPerK()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_ToRoomWPerK();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Kiln#getLearntFirings <em>Learnt Firings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Learnt Firings</em>'.
	 * @see saddlebar.model.commission.Kiln#getLearntFirings()
	 * @see #getKiln()
	 * @generated
	 */
	EAttribute getKiln_LearntFirings();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.FiringSchedule <em>Firing Schedule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Firing Schedule</em>'.
	 * @see saddlebar.model.commission.FiringSchedule
	 * @generated
	 */
	EClass getFiringSchedule();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.FiringSchedule#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.FiringSchedule#getStudio()
	 * @see #getFiringSchedule()
	 * @generated
	 */
	EReference getFiringSchedule_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.FiringSchedule#getPurpose <em>Purpose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Purpose</em>'.
	 * @see saddlebar.model.commission.FiringSchedule#getPurpose()
	 * @see #getFiringSchedule()
	 * @generated
	 */
	EAttribute getFiringSchedule_Purpose();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.FiringSchedule#getSegments <em>Segments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Segments</em>'.
	 * @see saddlebar.model.commission.FiringSchedule#getSegments()
	 * @see #getFiringSchedule()
	 * @generated
	 */
	EReference getFiringSchedule_Segments();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.FiringSchedule#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see saddlebar.model.commission.FiringSchedule#getSource()
	 * @see #getFiringSchedule()
	 * @generated
	 */
	EAttribute getFiringSchedule_Source();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.FiringSegment <em>Firing Segment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Firing Segment</em>'.
	 * @see saddlebar.model.commission.FiringSegment
	 * @generated
	 */
	EClass getFiringSegment();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.FiringSegment#getSchedule <em>Schedule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Schedule</em>'.
	 * @see saddlebar.model.commission.FiringSegment#getSchedule()
	 * @see #getFiringSegment()
	 * @generated
	 */
	EReference getFiringSegment_Schedule();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.FiringSegment#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see saddlebar.model.commission.FiringSegment#getName()
	 * @see #getFiringSegment()
	 * @generated
	 */
	EAttribute getFiringSegment_Name();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.FiringSegment#getRateKPerH <em>Rate KPer H</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rate KPer H</em>'.
	 * @see saddlebar.model.commission.FiringSegment#getRateKPerH()
	 * @see #getFiringSegment()
	 * @generated
	 */
	EAttribute getFiringSegment_RateKPerH();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.FiringSegment#getTargetC <em>Target C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Target C</em>'.
	 * @see saddlebar.model.commission.FiringSegment#getTargetC()
	 * @see #getFiringSegment()
	 * @generated
	 */
	EAttribute getFiringSegment_TargetC();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.FiringSegment#getSoakMin <em>Soak Min</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Soak Min</em>'.
	 * @see saddlebar.model.commission.FiringSegment#getSoakMin()
	 * @see #getFiringSegment()
	 * @generated
	 */
	EAttribute getFiringSegment_SoakMin();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.FiringSegment#isVent <em>Vent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vent</em>'.
	 * @see saddlebar.model.commission.FiringSegment#isVent()
	 * @see #getFiringSegment()
	 * @generated
	 */
	EAttribute getFiringSegment_Vent();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.FiringSegment#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see saddlebar.model.commission.FiringSegment#getNote()
	 * @see #getFiringSegment()
	 * @generated
	 */
	EAttribute getFiringSegment_Note();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.PriceBook <em>Price Book</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Price Book</em>'.
	 * @see saddlebar.model.commission.PriceBook
	 * @generated
	 */
	EClass getPriceBook();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.PriceBook#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.PriceBook#getStudio()
	 * @see #getPriceBook()
	 * @generated
	 */
	EReference getPriceBook_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PriceBook#getLabourPerHour <em>Labour Per Hour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Labour Per Hour</em>'.
	 * @see saddlebar.model.commission.PriceBook#getLabourPerHour()
	 * @see #getPriceBook()
	 * @generated
	 */
	EAttribute getPriceBook_LabourPerHour();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PriceBook#getEnergyPerKwh <em>Energy Per Kwh</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Energy Per Kwh</em>'.
	 * @see saddlebar.model.commission.PriceBook#getEnergyPerKwh()
	 * @see #getPriceBook()
	 * @generated
	 */
	EAttribute getPriceBook_EnergyPerKwh();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PriceBook#getOverheadShare <em>Overhead Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Overhead Share</em>'.
	 * @see saddlebar.model.commission.PriceBook#getOverheadShare()
	 * @see #getPriceBook()
	 * @generated
	 */
	EAttribute getPriceBook_OverheadShare();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PriceBook#getMarginShare <em>Margin Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Margin Share</em>'.
	 * @see saddlebar.model.commission.PriceBook#getMarginShare()
	 * @see #getPriceBook()
	 * @generated
	 */
	EAttribute getPriceBook_MarginShare();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PriceBook#getTaxShare <em>Tax Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tax Share</em>'.
	 * @see saddlebar.model.commission.PriceBook#getTaxShare()
	 * @see #getPriceBook()
	 * @generated
	 */
	EAttribute getPriceBook_TaxShare();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.PriceBook#getItems <em>Items</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Items</em>'.
	 * @see saddlebar.model.commission.PriceBook#getItems()
	 * @see #getPriceBook()
	 * @generated
	 */
	EReference getPriceBook_Items();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.PriceItem <em>Price Item</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Price Item</em>'.
	 * @see saddlebar.model.commission.PriceItem
	 * @generated
	 */
	EClass getPriceItem();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.PriceItem#getBook <em>Book</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Book</em>'.
	 * @see saddlebar.model.commission.PriceItem#getBook()
	 * @see #getPriceItem()
	 * @generated
	 */
	EReference getPriceItem_Book();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PriceItem#getKey <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Key</em>'.
	 * @see saddlebar.model.commission.PriceItem#getKey()
	 * @see #getPriceItem()
	 * @generated
	 */
	EAttribute getPriceItem_Key();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PriceItem#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see saddlebar.model.commission.PriceItem#getUnit()
	 * @see #getPriceItem()
	 * @generated
	 */
	EAttribute getPriceItem_Unit();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PriceItem#getPrice <em>Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price</em>'.
	 * @see saddlebar.model.commission.PriceItem#getPrice()
	 * @see #getPriceItem()
	 * @generated
	 */
	EAttribute getPriceItem_Price();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PriceItem#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see saddlebar.model.commission.PriceItem#getFrom()
	 * @see #getPriceItem()
	 * @generated
	 */
	EAttribute getPriceItem_From();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PriceItem#getCurrency <em>Currency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Currency</em>'.
	 * @see saddlebar.model.commission.PriceItem#getCurrency()
	 * @see #getPriceItem()
	 * @generated
	 */
	EAttribute getPriceItem_Currency();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Printer <em>Printer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Printer</em>'.
	 * @see saddlebar.model.commission.Printer
	 * @generated
	 */
	EClass getPrinter();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Printer#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.Printer#getStudio()
	 * @see #getPrinter()
	 * @generated
	 */
	EReference getPrinter_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Printer#getDpi <em>Dpi</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dpi</em>'.
	 * @see saddlebar.model.commission.Printer#getDpi()
	 * @see #getPrinter()
	 * @generated
	 */
	EAttribute getPrinter_Dpi();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Printer#getMarginMm <em>Margin Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Margin Mm</em>'.
	 * @see saddlebar.model.commission.Printer#getMarginMm()
	 * @see #getPrinter()
	 * @generated
	 */
	EAttribute getPrinter_MarginMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Printer#getScaleX <em>Scale X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Scale X</em>'.
	 * @see saddlebar.model.commission.Printer#getScaleX()
	 * @see #getPrinter()
	 * @generated
	 */
	EAttribute getPrinter_ScaleX();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Printer#getScaleY <em>Scale Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Scale Y</em>'.
	 * @see saddlebar.model.commission.Printer#getScaleY()
	 * @see #getPrinter()
	 * @generated
	 */
	EAttribute getPrinter_ScaleY();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Printer#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see saddlebar.model.commission.Printer#getSource()
	 * @see #getPrinter()
	 * @generated
	 */
	EAttribute getPrinter_Source();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Printer#getSkew <em>Skew</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Skew</em>'.
	 * @see saddlebar.model.commission.Printer#getSkew()
	 * @see #getPrinter()
	 * @generated
	 */
	EAttribute getPrinter_Skew();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Printer#getMeasured <em>Measured</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measured</em>'.
	 * @see saddlebar.model.commission.Printer#getMeasured()
	 * @see #getPrinter()
	 * @generated
	 */
	EAttribute getPrinter_Measured();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.Printer#getBandPeriodsMm <em>Band Periods Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Band Periods Mm</em>'.
	 * @see saddlebar.model.commission.Printer#getBandPeriodsMm()
	 * @see #getPrinter()
	 * @generated
	 */
	EAttribute getPrinter_BandPeriodsMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Printer#getSolidTransmittance <em>Solid Transmittance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Solid Transmittance</em>'.
	 * @see saddlebar.model.commission.Printer#getSolidTransmittance()
	 * @see #getPrinter()
	 * @generated
	 */
	EAttribute getPrinter_SolidTransmittance();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.SheetStock <em>Sheet Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sheet Stock</em>'.
	 * @see saddlebar.model.commission.SheetStock
	 * @generated
	 */
	EClass getSheetStock();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.SheetStock#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.SheetStock#getStudio()
	 * @see #getSheetStock()
	 * @generated
	 */
	EReference getSheetStock_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SheetStock#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see saddlebar.model.commission.SheetStock#getMaterial()
	 * @see #getSheetStock()
	 * @generated
	 */
	EAttribute getSheetStock_Material();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SheetStock#getPaper <em>Paper</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Paper</em>'.
	 * @see saddlebar.model.commission.SheetStock#getPaper()
	 * @see #getSheetStock()
	 * @generated
	 */
	EAttribute getSheetStock_Paper();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SheetStock#getInStock <em>In Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>In Stock</em>'.
	 * @see saddlebar.model.commission.SheetStock#getInStock()
	 * @see #getSheetStock()
	 * @generated
	 */
	EAttribute getSheetStock_InStock();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SheetStock#getPricePerSheet <em>Price Per Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price Per Sheet</em>'.
	 * @see saddlebar.model.commission.SheetStock#getPricePerSheet()
	 * @see #getSheetStock()
	 * @generated
	 */
	EAttribute getSheetStock_PricePerSheet();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.ToneCalibration <em>Tone Calibration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Tone Calibration</em>'.
	 * @see saddlebar.model.commission.ToneCalibration
	 * @generated
	 */
	EClass getToneCalibration();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.ToneCalibration#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getStudio()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EReference getToneCalibration_Studio();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.ToneCalibration#getMesh <em>Mesh</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Mesh</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getMesh()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EReference getToneCalibration_Mesh();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.ToneCalibration#getPaint <em>Paint</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Paint</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getPaint()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EReference getToneCalibration_Paint();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.ToneCalibration#getPrinter <em>Printer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Printer</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getPrinter()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EReference getToneCalibration_Printer();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ToneCalibration#getMethod <em>Method</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Method</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getMethod()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EAttribute getToneCalibration_Method();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ToneCalibration#getProcessKey <em>Process Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Process Key</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getProcessKey()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EAttribute getToneCalibration_ProcessKey();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ToneCalibration#getLpi <em>Lpi</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lpi</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getLpi()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EAttribute getToneCalibration_Lpi();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ToneCalibration#getDotMm <em>Dot Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dot Mm</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getDotMm()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EAttribute getToneCalibration_DotMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ToneCalibration#getMeasured <em>Measured</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measured</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getMeasured()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EAttribute getToneCalibration_Measured();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ToneCalibration#getReadingsFile <em>Readings File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Readings File</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getReadingsFile()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EAttribute getToneCalibration_ReadingsFile();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.ToneCalibration#getPoints <em>Points</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Points</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getPoints()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EReference getToneCalibration_Points();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.ToneCalibration#getSupersededBy <em>Superseded By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Superseded By</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getSupersededBy()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EReference getToneCalibration_SupersededBy();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ToneCalibration#getYuleNielsen <em>Yule Nielsen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Yule Nielsen</em>'.
	 * @see saddlebar.model.commission.ToneCalibration#getYuleNielsen()
	 * @see #getToneCalibration()
	 * @generated
	 */
	EAttribute getToneCalibration_YuleNielsen();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.TonePoint <em>Tone Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Tone Point</em>'.
	 * @see saddlebar.model.commission.TonePoint
	 * @generated
	 */
	EClass getTonePoint();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.TonePoint#getCalibration <em>Calibration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Calibration</em>'.
	 * @see saddlebar.model.commission.TonePoint#getCalibration()
	 * @see #getTonePoint()
	 * @generated
	 */
	EReference getTonePoint_Calibration();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.TonePoint#getNominal <em>Nominal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Nominal</em>'.
	 * @see saddlebar.model.commission.TonePoint#getNominal()
	 * @see #getTonePoint()
	 * @generated
	 */
	EAttribute getTonePoint_Nominal();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.TonePoint#getEffective <em>Effective</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Effective</em>'.
	 * @see saddlebar.model.commission.TonePoint#getEffective()
	 * @see #getTonePoint()
	 * @generated
	 */
	EAttribute getTonePoint_Effective();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.ProcessSetting <em>Process Setting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Process Setting</em>'.
	 * @see saddlebar.model.commission.ProcessSetting
	 * @generated
	 */
	EClass getProcessSetting();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.ProcessSetting#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.ProcessSetting#getStudio()
	 * @see #getProcessSetting()
	 * @generated
	 */
	EReference getProcessSetting_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ProcessSetting#getProcessKey <em>Process Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Process Key</em>'.
	 * @see saddlebar.model.commission.ProcessSetting#getProcessKey()
	 * @see #getProcessSetting()
	 * @generated
	 */
	EAttribute getProcessSetting_ProcessKey();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ProcessSetting#getTonerSide <em>Toner Side</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Toner Side</em>'.
	 * @see saddlebar.model.commission.ProcessSetting#getTonerSide()
	 * @see #getProcessSetting()
	 * @generated
	 */
	EAttribute getProcessSetting_TonerSide();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ProcessSetting#isConfirmed <em>Confirmed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Confirmed</em>'.
	 * @see saddlebar.model.commission.ProcessSetting#isConfirmed()
	 * @see #getProcessSetting()
	 * @generated
	 */
	EAttribute getProcessSetting_Confirmed();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ProcessSetting#getPressC <em>Press C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Press C</em>'.
	 * @see saddlebar.model.commission.ProcessSetting#getPressC()
	 * @see #getProcessSetting()
	 * @generated
	 */
	EAttribute getProcessSetting_PressC();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ProcessSetting#getPressMin <em>Press Min</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Press Min</em>'.
	 * @see saddlebar.model.commission.ProcessSetting#getPressMin()
	 * @see #getProcessSetting()
	 * @generated
	 */
	EAttribute getProcessSetting_PressMin();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ProcessSetting#getCoolMin <em>Cool Min</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cool Min</em>'.
	 * @see saddlebar.model.commission.ProcessSetting#getCoolMin()
	 * @see #getProcessSetting()
	 * @generated
	 */
	EAttribute getProcessSetting_CoolMin();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ProcessSetting#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see saddlebar.model.commission.ProcessSetting#getSource()
	 * @see #getProcessSetting()
	 * @generated
	 */
	EAttribute getProcessSetting_Source();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Person <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Person</em>'.
	 * @see saddlebar.model.commission.Person
	 * @generated
	 */
	EClass getPerson();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Person#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.Person#getStudio()
	 * @see #getPerson()
	 * @generated
	 */
	EReference getPerson_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Person#getInitials <em>Initials</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Initials</em>'.
	 * @see saddlebar.model.commission.Person#getInitials()
	 * @see #getPerson()
	 * @generated
	 */
	EAttribute getPerson_Initials();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Person#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see saddlebar.model.commission.Person#getRole()
	 * @see #getPerson()
	 * @generated
	 */
	EAttribute getPerson_Role();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Supplier <em>Supplier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Supplier</em>'.
	 * @see saddlebar.model.commission.Supplier
	 * @generated
	 */
	EClass getSupplier();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Supplier#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.Supplier#getStudio()
	 * @see #getSupplier()
	 * @generated
	 */
	EReference getSupplier_Studio();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Supplier#getContact <em>Contact</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contact</em>'.
	 * @see saddlebar.model.commission.Supplier#getContact()
	 * @see #getSupplier()
	 * @generated
	 */
	EAttribute getSupplier_Contact();

	/**
	 * Returns the meta object for the reference list '{@link saddlebar.model.commission.Supplier#getPaints <em>Paints</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Paints</em>'.
	 * @see saddlebar.model.commission.Supplier#getPaints()
	 * @see #getSupplier()
	 * @generated
	 */
	EReference getSupplier_Paints();

	/**
	 * Returns the meta object for the reference list '{@link saddlebar.model.commission.Supplier#getGlass <em>Glass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Glass</em>'.
	 * @see saddlebar.model.commission.Supplier#getGlass()
	 * @see #getSupplier()
	 * @generated
	 */
	EReference getSupplier_Glass();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Commission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Commission</em>'.
	 * @see saddlebar.model.commission.Commission
	 * @generated
	 */
	EClass getCommission();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Commission#getFormatVersion <em>Format Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format Version</em>'.
	 * @see saddlebar.model.commission.Commission#getFormatVersion()
	 * @see #getCommission()
	 * @generated
	 */
	EAttribute getCommission_FormatVersion();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Commission#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see saddlebar.model.commission.Commission#getTitle()
	 * @see #getCommission()
	 * @generated
	 */
	EAttribute getCommission_Title();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Commission#getNumber <em>Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Number</em>'.
	 * @see saddlebar.model.commission.Commission#getNumber()
	 * @see #getCommission()
	 * @generated
	 */
	EAttribute getCommission_Number();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Commission#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see saddlebar.model.commission.Commission#getNote()
	 * @see #getCommission()
	 * @generated
	 */
	EAttribute getCommission_Note();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Commission#getUnits <em>Units</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Units</em>'.
	 * @see saddlebar.model.commission.Commission#getUnits()
	 * @see #getCommission()
	 * @generated
	 */
	EAttribute getCommission_Units();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.Commission#getPapers <em>Papers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Papers</em>'.
	 * @see saddlebar.model.commission.Commission#getPapers()
	 * @see #getCommission()
	 * @generated
	 */
	EAttribute getCommission_Papers();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Commission#getJoin <em>Join</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Join</em>'.
	 * @see saddlebar.model.commission.Commission#getJoin()
	 * @see #getCommission()
	 * @generated
	 */
	EAttribute getCommission_Join();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Commission#getGapMm <em>Gap Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gap Mm</em>'.
	 * @see saddlebar.model.commission.Commission#getGapMm()
	 * @see #getCommission()
	 * @generated
	 */
	EAttribute getCommission_GapMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Commission#getSheetGapMm <em>Sheet Gap Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Gap Mm</em>'.
	 * @see saddlebar.model.commission.Commission#getSheetGapMm()
	 * @see #getCommission()
	 * @generated
	 */
	EAttribute getCommission_SheetGapMm();

	/**
	 * Returns the meta object for the containment reference '{@link saddlebar.model.commission.Commission#getClient <em>Client</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Client</em>'.
	 * @see saddlebar.model.commission.Commission#getClient()
	 * @see #getCommission()
	 * @generated
	 */
	EReference getCommission_Client();

	/**
	 * Returns the meta object for the containment reference '{@link saddlebar.model.commission.Commission#getSite <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Site</em>'.
	 * @see saddlebar.model.commission.Commission#getSite()
	 * @see #getCommission()
	 * @generated
	 */
	EReference getCommission_Site();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Commission#getMilestones <em>Milestones</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Milestones</em>'.
	 * @see saddlebar.model.commission.Commission#getMilestones()
	 * @see #getCommission()
	 * @generated
	 */
	EReference getCommission_Milestones();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Commission#getQuotes <em>Quotes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Quotes</em>'.
	 * @see saddlebar.model.commission.Commission#getQuotes()
	 * @see #getCommission()
	 * @generated
	 */
	EReference getCommission_Quotes();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Commission#getApprovals <em>Approvals</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Approvals</em>'.
	 * @see saddlebar.model.commission.Commission#getApprovals()
	 * @see #getCommission()
	 * @generated
	 */
	EReference getCommission_Approvals();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Commission#getSheets <em>Sheets</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sheets</em>'.
	 * @see saddlebar.model.commission.Commission#getSheets()
	 * @see #getCommission()
	 * @generated
	 */
	EReference getCommission_Sheets();

	/**
	 * Returns the meta object for the reference list '{@link saddlebar.model.commission.Commission#getWindows <em>Windows</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Windows</em>'.
	 * @see saddlebar.model.commission.Commission#getWindows()
	 * @see #getCommission()
	 * @generated
	 */
	EReference getCommission_Windows();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.Commission#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Studio</em>'.
	 * @see saddlebar.model.commission.Commission#getStudio()
	 * @see #getCommission()
	 * @generated
	 */
	EReference getCommission_Studio();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Client <em>Client</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Client</em>'.
	 * @see saddlebar.model.commission.Client
	 * @generated
	 */
	EClass getClient();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Client#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Commission</em>'.
	 * @see saddlebar.model.commission.Client#getCommission()
	 * @see #getClient()
	 * @generated
	 */
	EReference getClient_Commission();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Client#getContact <em>Contact</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contact</em>'.
	 * @see saddlebar.model.commission.Client#getContact()
	 * @see #getClient()
	 * @generated
	 */
	EAttribute getClient_Contact();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Client#getAddress <em>Address</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Address</em>'.
	 * @see saddlebar.model.commission.Client#getAddress()
	 * @see #getClient()
	 * @generated
	 */
	EAttribute getClient_Address();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Site <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Site</em>'.
	 * @see saddlebar.model.commission.Site
	 * @generated
	 */
	EClass getSite();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Site#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Commission</em>'.
	 * @see saddlebar.model.commission.Site#getCommission()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Commission();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Site#getAddress <em>Address</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Address</em>'.
	 * @see saddlebar.model.commission.Site#getAddress()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Address();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Site#getAccess <em>Access</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Access</em>'.
	 * @see saddlebar.model.commission.Site#getAccess()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Access();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Site#getDistanceKm <em>Distance Km</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Distance Km</em>'.
	 * @see saddlebar.model.commission.Site#getDistanceKm()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_DistanceKm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Site#getTrips <em>Trips</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Trips</em>'.
	 * @see saddlebar.model.commission.Site#getTrips()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Trips();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Milestone <em>Milestone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Milestone</em>'.
	 * @see saddlebar.model.commission.Milestone
	 * @generated
	 */
	EClass getMilestone();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Milestone#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Commission</em>'.
	 * @see saddlebar.model.commission.Milestone#getCommission()
	 * @see #getMilestone()
	 * @generated
	 */
	EReference getMilestone_Commission();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Milestone#getDue <em>Due</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Due</em>'.
	 * @see saddlebar.model.commission.Milestone#getDue()
	 * @see #getMilestone()
	 * @generated
	 */
	EAttribute getMilestone_Due();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Milestone#getDone <em>Done</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Done</em>'.
	 * @see saddlebar.model.commission.Milestone#getDone()
	 * @see #getMilestone()
	 * @generated
	 */
	EAttribute getMilestone_Done();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Milestone#getWorkShare <em>Work Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Work Share</em>'.
	 * @see saddlebar.model.commission.Milestone#getWorkShare()
	 * @see #getMilestone()
	 * @generated
	 */
	EAttribute getMilestone_WorkShare();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Milestone#getPayShare <em>Pay Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pay Share</em>'.
	 * @see saddlebar.model.commission.Milestone#getPayShare()
	 * @see #getMilestone()
	 * @generated
	 */
	EAttribute getMilestone_PayShare();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Quote <em>Quote</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Quote</em>'.
	 * @see saddlebar.model.commission.Quote
	 * @generated
	 */
	EClass getQuote();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Quote#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Commission</em>'.
	 * @see saddlebar.model.commission.Quote#getCommission()
	 * @see #getQuote()
	 * @generated
	 */
	EReference getQuote_Commission();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Quote#getNumber <em>Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Number</em>'.
	 * @see saddlebar.model.commission.Quote#getNumber()
	 * @see #getQuote()
	 * @generated
	 */
	EAttribute getQuote_Number();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Quote#getState <em>State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>State</em>'.
	 * @see saddlebar.model.commission.Quote#getState()
	 * @see #getQuote()
	 * @generated
	 */
	EAttribute getQuote_State();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Quote#getDated <em>Dated</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dated</em>'.
	 * @see saddlebar.model.commission.Quote#getDated()
	 * @see #getQuote()
	 * @generated
	 */
	EAttribute getQuote_Dated();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Quote#getValidUntil <em>Valid Until</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Valid Until</em>'.
	 * @see saddlebar.model.commission.Quote#getValidUntil()
	 * @see #getQuote()
	 * @generated
	 */
	EAttribute getQuote_ValidUntil();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Quote#getCurrency <em>Currency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Currency</em>'.
	 * @see saddlebar.model.commission.Quote#getCurrency()
	 * @see #getQuote()
	 * @generated
	 */
	EAttribute getQuote_Currency();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Quote#getTotal <em>Total</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Total</em>'.
	 * @see saddlebar.model.commission.Quote#getTotal()
	 * @see #getQuote()
	 * @generated
	 */
	EAttribute getQuote_Total();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Quote#getLines <em>Lines</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lines</em>'.
	 * @see saddlebar.model.commission.Quote#getLines()
	 * @see #getQuote()
	 * @generated
	 */
	EReference getQuote_Lines();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Quote#getChanges <em>Changes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Changes</em>'.
	 * @see saddlebar.model.commission.Quote#getChanges()
	 * @see #getQuote()
	 * @generated
	 */
	EAttribute getQuote_Changes();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Quote#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see saddlebar.model.commission.Quote#getReason()
	 * @see #getQuote()
	 * @generated
	 */
	EAttribute getQuote_Reason();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.QuoteLine <em>Quote Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Quote Line</em>'.
	 * @see saddlebar.model.commission.QuoteLine
	 * @generated
	 */
	EClass getQuoteLine();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.QuoteLine#getQuote <em>Quote</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Quote</em>'.
	 * @see saddlebar.model.commission.QuoteLine#getQuote()
	 * @see #getQuoteLine()
	 * @generated
	 */
	EReference getQuoteLine_Quote();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.QuoteLine#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see saddlebar.model.commission.QuoteLine#getText()
	 * @see #getQuoteLine()
	 * @generated
	 */
	EAttribute getQuoteLine_Text();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.QuoteLine#getSourceKey <em>Source Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source Key</em>'.
	 * @see saddlebar.model.commission.QuoteLine#getSourceKey()
	 * @see #getQuoteLine()
	 * @generated
	 */
	EAttribute getQuoteLine_SourceKey();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.QuoteLine#getWindowName <em>Window Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Window Name</em>'.
	 * @see saddlebar.model.commission.QuoteLine#getWindowName()
	 * @see #getQuoteLine()
	 * @generated
	 */
	EAttribute getQuoteLine_WindowName();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.QuoteLine#getQuantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quantity</em>'.
	 * @see saddlebar.model.commission.QuoteLine#getQuantity()
	 * @see #getQuoteLine()
	 * @generated
	 */
	EAttribute getQuoteLine_Quantity();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.QuoteLine#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see saddlebar.model.commission.QuoteLine#getUnit()
	 * @see #getQuoteLine()
	 * @generated
	 */
	EAttribute getQuoteLine_Unit();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.QuoteLine#getUnitPrice <em>Unit Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit Price</em>'.
	 * @see saddlebar.model.commission.QuoteLine#getUnitPrice()
	 * @see #getQuoteLine()
	 * @generated
	 */
	EAttribute getQuoteLine_UnitPrice();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.QuoteLine#getAmount <em>Amount</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Amount</em>'.
	 * @see saddlebar.model.commission.QuoteLine#getAmount()
	 * @see #getQuoteLine()
	 * @generated
	 */
	EAttribute getQuoteLine_Amount();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Approval <em>Approval</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Approval</em>'.
	 * @see saddlebar.model.commission.Approval
	 * @generated
	 */
	EClass getApproval();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Approval#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Commission</em>'.
	 * @see saddlebar.model.commission.Approval#getCommission()
	 * @see #getApproval()
	 * @generated
	 */
	EReference getApproval_Commission();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Approval#getOn <em>On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>On</em>'.
	 * @see saddlebar.model.commission.Approval#getOn()
	 * @see #getApproval()
	 * @generated
	 */
	EAttribute getApproval_On();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Approval#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By</em>'.
	 * @see saddlebar.model.commission.Approval#getBy()
	 * @see #getApproval()
	 * @generated
	 */
	EAttribute getApproval_By();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.Approval#getQuote <em>Quote</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Quote</em>'.
	 * @see saddlebar.model.commission.Approval#getQuote()
	 * @see #getApproval()
	 * @generated
	 */
	EReference getApproval_Quote();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.Approval#getColourway <em>Colourway</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Colourway</em>'.
	 * @see saddlebar.model.commission.Approval#getColourway()
	 * @see #getApproval()
	 * @generated
	 */
	EReference getApproval_Colourway();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Sheet <em>Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sheet</em>'.
	 * @see saddlebar.model.commission.Sheet
	 * @generated
	 */
	EClass getSheet();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Sheet#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Commission</em>'.
	 * @see saddlebar.model.commission.Sheet#getCommission()
	 * @see #getSheet()
	 * @generated
	 */
	EReference getSheet_Commission();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Sheet#getNumber <em>Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Number</em>'.
	 * @see saddlebar.model.commission.Sheet#getNumber()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_Number();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Sheet#getPaper <em>Paper</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Paper</em>'.
	 * @see saddlebar.model.commission.Sheet#getPaper()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_Paper();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Sheet#getWidthMm <em>Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width Mm</em>'.
	 * @see saddlebar.model.commission.Sheet#getWidthMm()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_WidthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Sheet#getHeightMm <em>Height Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Mm</em>'.
	 * @see saddlebar.model.commission.Sheet#getHeightMm()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_HeightMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Sheet#getMarginMm <em>Margin Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Margin Mm</em>'.
	 * @see saddlebar.model.commission.Sheet#getMarginMm()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_MarginMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Sheet#getProcessKey <em>Process Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Process Key</em>'.
	 * @see saddlebar.model.commission.Sheet#getProcessKey()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_ProcessKey();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Sheet#getTonerSide <em>Toner Side</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Toner Side</em>'.
	 * @see saddlebar.model.commission.Sheet#getTonerSide()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_TonerSide();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Sheet#getDpi <em>Dpi</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dpi</em>'.
	 * @see saddlebar.model.commission.Sheet#getDpi()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_Dpi();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Sheet#getPlacements <em>Placements</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Placements</em>'.
	 * @see saddlebar.model.commission.Sheet#getPlacements()
	 * @see #getSheet()
	 * @generated
	 */
	EReference getSheet_Placements();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Sheet#getFiles <em>Files</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Files</em>'.
	 * @see saddlebar.model.commission.Sheet#getFiles()
	 * @see #getSheet()
	 * @generated
	 */
	EReference getSheet_Files();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Sheet#getContentKey <em>Content Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Content Key</em>'.
	 * @see saddlebar.model.commission.Sheet#getContentKey()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_ContentKey();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Placement <em>Placement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Placement</em>'.
	 * @see saddlebar.model.commission.Placement
	 * @generated
	 */
	EClass getPlacement();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Placement#getSheet <em>Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Sheet</em>'.
	 * @see saddlebar.model.commission.Placement#getSheet()
	 * @see #getPlacement()
	 * @generated
	 */
	EReference getPlacement_Sheet();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.Placement#getStencil <em>Stencil</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Stencil</em>'.
	 * @see saddlebar.model.commission.Placement#getStencil()
	 * @see #getPlacement()
	 * @generated
	 */
	EReference getPlacement_Stencil();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Placement#getXMm <em>XMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>XMm</em>'.
	 * @see saddlebar.model.commission.Placement#getXMm()
	 * @see #getPlacement()
	 * @generated
	 */
	EAttribute getPlacement_XMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Placement#getYMm <em>YMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>YMm</em>'.
	 * @see saddlebar.model.commission.Placement#getYMm()
	 * @see #getPlacement()
	 * @generated
	 */
	EAttribute getPlacement_YMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Placement#getRotationDeg <em>Rotation Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rotation Deg</em>'.
	 * @see saddlebar.model.commission.Placement#getRotationDeg()
	 * @see #getPlacement()
	 * @generated
	 */
	EAttribute getPlacement_RotationDeg();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Window <em>Window</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Window</em>'.
	 * @see saddlebar.model.commission.Window
	 * @generated
	 */
	EClass getWindow();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Window#getFormatVersion <em>Format Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format Version</em>'.
	 * @see saddlebar.model.commission.Window#getFormatVersion()
	 * @see #getWindow()
	 * @generated
	 */
	EAttribute getWindow_FormatVersion();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Window#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see saddlebar.model.commission.Window#getName()
	 * @see #getWindow()
	 * @generated
	 */
	EAttribute getWindow_Name();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Window#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see saddlebar.model.commission.Window#getTitle()
	 * @see #getWindow()
	 * @generated
	 */
	EAttribute getWindow_Title();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Window#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see saddlebar.model.commission.Window#getNote()
	 * @see #getWindow()
	 * @generated
	 */
	EAttribute getWindow_Note();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.Window#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Commission</em>'.
	 * @see saddlebar.model.commission.Window#getCommission()
	 * @see #getWindow()
	 * @generated
	 */
	EReference getWindow_Commission();

	/**
	 * Returns the meta object for the containment reference '{@link saddlebar.model.commission.Window#getOpening <em>Opening</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Opening</em>'.
	 * @see saddlebar.model.commission.Window#getOpening()
	 * @see #getWindow()
	 * @generated
	 */
	EReference getWindow_Opening();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Window#getColourways <em>Colourways</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Colourways</em>'.
	 * @see saddlebar.model.commission.Window#getColourways()
	 * @see #getWindow()
	 * @generated
	 */
	EReference getWindow_Colourways();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.Window#getChosen <em>Chosen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Chosen</em>'.
	 * @see saddlebar.model.commission.Window#getChosen()
	 * @see #getWindow()
	 * @generated
	 */
	EReference getWindow_Chosen();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Window#getPanels <em>Panels</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Panels</em>'.
	 * @see saddlebar.model.commission.Window#getPanels()
	 * @see #getWindow()
	 * @generated
	 */
	EReference getWindow_Panels();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Opening <em>Opening</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Opening</em>'.
	 * @see saddlebar.model.commission.Opening
	 * @generated
	 */
	EClass getOpening();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Opening#getWindow <em>Window</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Window</em>'.
	 * @see saddlebar.model.commission.Opening#getWindow()
	 * @see #getOpening()
	 * @generated
	 */
	EReference getOpening_Window();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see saddlebar.model.commission.Opening#getKind()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Kind();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getSightWidthMm <em>Sight Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sight Width Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getSightWidthMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_SightWidthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getSightHeightMm <em>Sight Height Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sight Height Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getSightHeightMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_SightHeightMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getTightWidthMm <em>Tight Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tight Width Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getTightWidthMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_TightWidthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getTightHeightMm <em>Tight Height Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tight Height Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getTightHeightMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_TightHeightMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see saddlebar.model.commission.Opening#getCount()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Count();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#isOverhead <em>Overhead</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Overhead</em>'.
	 * @see saddlebar.model.commission.Opening#isOverhead()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Overhead();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#isInDoor <em>In Door</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>In Door</em>'.
	 * @see saddlebar.model.commission.Opening#isInDoor()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_InDoor();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getTemplateFile <em>Template File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Template File</em>'.
	 * @see saddlebar.model.commission.Opening#getTemplateFile()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_TemplateFile();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see saddlebar.model.commission.Opening#getNote()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Note();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getJambMm <em>Jamb Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Jamb Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getJambMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_JambMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getRiseMm <em>Rise Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rise Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getRiseMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_RiseMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getTopMm <em>Top Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Top Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getTopMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_TopMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getRightMm <em>Right Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Right Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getRightMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_RightMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getBottomMm <em>Bottom Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bottom Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getBottomMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_BottomMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getLeftMm <em>Left Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Left Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getLeftMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_LeftMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getDiagonalDownMm <em>Diagonal Down Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diagonal Down Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getDiagonalDownMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_DiagonalDownMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getDiagonalUpMm <em>Diagonal Up Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diagonal Up Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getDiagonalUpMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_DiagonalUpMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getRebateMm <em>Rebate Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rebate Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getRebateMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_RebateMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getClearanceMm <em>Clearance Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clearance Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getClearanceMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_ClearanceMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Opening#getOutline <em>Outline</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outline</em>'.
	 * @see saddlebar.model.commission.Opening#getOutline()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_Outline();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.Opening#getBarsMm <em>Bars Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Bars Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getBarsMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_BarsMm();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.Opening#getDivisionsMm <em>Divisions Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Divisions Mm</em>'.
	 * @see saddlebar.model.commission.Opening#getDivisionsMm()
	 * @see #getOpening()
	 * @generated
	 */
	EAttribute getOpening_DivisionsMm();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Colourway <em>Colourway</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Colourway</em>'.
	 * @see saddlebar.model.commission.Colourway
	 * @generated
	 */
	EClass getColourway();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Colourway#getWindow <em>Window</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Window</em>'.
	 * @see saddlebar.model.commission.Colourway#getWindow()
	 * @see #getColourway()
	 * @generated
	 */
	EReference getColourway_Window();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Colourway#isApproved <em>Approved</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Approved</em>'.
	 * @see saddlebar.model.commission.Colourway#isApproved()
	 * @see #getColourway()
	 * @generated
	 */
	EAttribute getColourway_Approved();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Colourway#getApprovedOn <em>Approved On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Approved On</em>'.
	 * @see saddlebar.model.commission.Colourway#getApprovedOn()
	 * @see #getColourway()
	 * @generated
	 */
	EAttribute getColourway_ApprovedOn();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Colourway#getChoices <em>Choices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Choices</em>'.
	 * @see saddlebar.model.commission.Colourway#getChoices()
	 * @see #getColourway()
	 * @generated
	 */
	EReference getColourway_Choices();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.GlassChoice <em>Glass Choice</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Glass Choice</em>'.
	 * @see saddlebar.model.commission.GlassChoice
	 * @generated
	 */
	EClass getGlassChoice();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.GlassChoice#getColourway <em>Colourway</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Colourway</em>'.
	 * @see saddlebar.model.commission.GlassChoice#getColourway()
	 * @see #getGlassChoice()
	 * @generated
	 */
	EReference getGlassChoice_Colourway();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.GlassChoice#getPiece <em>Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Piece</em>'.
	 * @see saddlebar.model.commission.GlassChoice#getPiece()
	 * @see #getGlassChoice()
	 * @generated
	 */
	EReference getGlassChoice_Piece();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.GlassChoice#getGlass <em>Glass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Glass</em>'.
	 * @see saddlebar.model.commission.GlassChoice#getGlass()
	 * @see #getGlassChoice()
	 * @generated
	 */
	EReference getGlassChoice_Glass();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Panel <em>Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Panel</em>'.
	 * @see saddlebar.model.commission.Panel
	 * @generated
	 */
	EClass getPanel();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Panel#getWindow <em>Window</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Window</em>'.
	 * @see saddlebar.model.commission.Panel#getWindow()
	 * @see #getPanel()
	 * @generated
	 */
	EReference getPanel_Window();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Panel#getXMm <em>XMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>XMm</em>'.
	 * @see saddlebar.model.commission.Panel#getXMm()
	 * @see #getPanel()
	 * @generated
	 */
	EAttribute getPanel_XMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Panel#getYMm <em>YMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>YMm</em>'.
	 * @see saddlebar.model.commission.Panel#getYMm()
	 * @see #getPanel()
	 * @generated
	 */
	EAttribute getPanel_YMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Panel#getOutline <em>Outline</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outline</em>'.
	 * @see saddlebar.model.commission.Panel#getOutline()
	 * @see #getPanel()
	 * @generated
	 */
	EAttribute getPanel_Outline();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Panel#getJoin <em>Join</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Join</em>'.
	 * @see saddlebar.model.commission.Panel#getJoin()
	 * @see #getPanel()
	 * @generated
	 */
	EAttribute getPanel_Join();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Panel#getGapMm <em>Gap Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gap Mm</em>'.
	 * @see saddlebar.model.commission.Panel#getGapMm()
	 * @see #getPanel()
	 * @generated
	 */
	EAttribute getPanel_GapMm();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.Panel#getJoinStock <em>Join Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Join Stock</em>'.
	 * @see saddlebar.model.commission.Panel#getJoinStock()
	 * @see #getPanel()
	 * @generated
	 */
	EReference getPanel_JoinStock();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Panel#getArtwork <em>Artwork</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Artwork</em>'.
	 * @see saddlebar.model.commission.Panel#getArtwork()
	 * @see #getPanel()
	 * @generated
	 */
	EReference getPanel_Artwork();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Panel#getPieces <em>Pieces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Pieces</em>'.
	 * @see saddlebar.model.commission.Panel#getPieces()
	 * @see #getPanel()
	 * @generated
	 */
	EReference getPanel_Pieces();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Panel#getLayers <em>Layers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Layers</em>'.
	 * @see saddlebar.model.commission.Panel#getLayers()
	 * @see #getPanel()
	 * @generated
	 */
	EReference getPanel_Layers();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Panel#getContentKey <em>Content Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Content Key</em>'.
	 * @see saddlebar.model.commission.Panel#getContentKey()
	 * @see #getPanel()
	 * @generated
	 */
	EAttribute getPanel_ContentKey();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Panel#getEdgeAllowanceMm <em>Edge Allowance Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Edge Allowance Mm</em>'.
	 * @see saddlebar.model.commission.Panel#getEdgeAllowanceMm()
	 * @see #getPanel()
	 * @generated
	 */
	EAttribute getPanel_EdgeAllowanceMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Panel#getOutlineElement <em>Outline Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outline Element</em>'.
	 * @see saddlebar.model.commission.Panel#getOutlineElement()
	 * @see #getPanel()
	 * @generated
	 */
	EAttribute getPanel_OutlineElement();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Panel#getMendings <em>Mendings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Mendings</em>'.
	 * @see saddlebar.model.commission.Panel#getMendings()
	 * @see #getPanel()
	 * @generated
	 */
	EReference getPanel_Mendings();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Panel#getJoinRules <em>Join Rules</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Join Rules</em>'.
	 * @see saddlebar.model.commission.Panel#getJoinRules()
	 * @see #getPanel()
	 * @generated
	 */
	EReference getPanel_JoinRules();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.ArtworkReference <em>Artwork Reference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Artwork Reference</em>'.
	 * @see saddlebar.model.commission.ArtworkReference
	 * @generated
	 */
	EClass getArtworkReference();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.ArtworkReference#getPanel <em>Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Panel</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getPanel()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EReference getArtworkReference_Panel();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkReference#getFile <em>File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>File</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getFile()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EAttribute getArtworkReference_File();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkReference#getOriginalName <em>Original Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Original Name</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getOriginalName()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EAttribute getArtworkReference_OriginalName();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkReference#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getSha256()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EAttribute getArtworkReference_Sha256();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkReference#getRevision <em>Revision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Revision</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getRevision()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EAttribute getArtworkReference_Revision();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkReference#getBrought <em>Brought</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Brought</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getBrought()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EAttribute getArtworkReference_Brought();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkReference#getWidthMm <em>Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width Mm</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getWidthMm()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EAttribute getArtworkReference_WidthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkReference#getHeightMm <em>Height Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Mm</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getHeightMm()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EAttribute getArtworkReference_HeightMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkReference#getScale <em>Scale</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Scale</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getScale()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EAttribute getArtworkReference_Scale();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.ArtworkReference#getRoles <em>Roles</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Roles</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getRoles()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EReference getArtworkReference_Roles();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkReference#getPage <em>Page</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Page</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getPage()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EAttribute getArtworkReference_Page();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkReference#isRolesConfirmed <em>Roles Confirmed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Roles Confirmed</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#isRolesConfirmed()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EAttribute getArtworkReference_RolesConfirmed();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.ArtworkReference#getGlassLayers <em>Glass Layers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Glass Layers</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getGlassLayers()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EAttribute getArtworkReference_GlassLayers();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.ArtworkReference#getUnusedLayers <em>Unused Layers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Unused Layers</em>'.
	 * @see saddlebar.model.commission.ArtworkReference#getUnusedLayers()
	 * @see #getArtworkReference()
	 * @generated
	 */
	EAttribute getArtworkReference_UnusedLayers();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.RoleAssignment <em>Role Assignment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Role Assignment</em>'.
	 * @see saddlebar.model.commission.RoleAssignment
	 * @generated
	 */
	EClass getRoleAssignment();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.RoleAssignment#getArtwork <em>Artwork</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Artwork</em>'.
	 * @see saddlebar.model.commission.RoleAssignment#getArtwork()
	 * @see #getRoleAssignment()
	 * @generated
	 */
	EReference getRoleAssignment_Artwork();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.RoleAssignment#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see saddlebar.model.commission.RoleAssignment#getRole()
	 * @see #getRoleAssignment()
	 * @generated
	 */
	EAttribute getRoleAssignment_Role();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.RoleAssignment#getArtLayer <em>Art Layer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Art Layer</em>'.
	 * @see saddlebar.model.commission.RoleAssignment#getArtLayer()
	 * @see #getRoleAssignment()
	 * @generated
	 */
	EAttribute getRoleAssignment_ArtLayer();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Piece <em>Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Piece</em>'.
	 * @see saddlebar.model.commission.Piece
	 * @generated
	 */
	EClass getPiece();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Piece#getPanel <em>Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Panel</em>'.
	 * @see saddlebar.model.commission.Piece#getPanel()
	 * @see #getPiece()
	 * @generated
	 */
	EReference getPiece_Panel();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getNumber <em>Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Number</em>'.
	 * @see saddlebar.model.commission.Piece#getNumber()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_Number();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getFace <em>Face</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Face</em>'.
	 * @see saddlebar.model.commission.Piece#getFace()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_Face();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getNet <em>Net</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Net</em>'.
	 * @see saddlebar.model.commission.Piece#getNet()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_Net();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getLabelXMm <em>Label XMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Label XMm</em>'.
	 * @see saddlebar.model.commission.Piece#getLabelXMm()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_LabelXMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getLabelYMm <em>Label YMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Label YMm</em>'.
	 * @see saddlebar.model.commission.Piece#getLabelYMm()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_LabelYMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getInradiusMm <em>Inradius Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inradius Mm</em>'.
	 * @see saddlebar.model.commission.Piece#getInradiusMm()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_InradiusMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getAreaMm2 <em>Area Mm2</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Area Mm2</em>'.
	 * @see saddlebar.model.commission.Piece#getAreaMm2()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_AreaMm2();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getNetAreaMm2 <em>Net Area Mm2</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Net Area Mm2</em>'.
	 * @see saddlebar.model.commission.Piece#getNetAreaMm2()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_NetAreaMm2();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getPerimeterMm <em>Perimeter Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Perimeter Mm</em>'.
	 * @see saddlebar.model.commission.Piece#getPerimeterMm()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_PerimeterMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getShapeKey <em>Shape Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shape Key</em>'.
	 * @see saddlebar.model.commission.Piece#getShapeKey()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_ShapeKey();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.Piece#getProblems <em>Problems</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Problems</em>'.
	 * @see saddlebar.model.commission.Piece#getProblems()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_Problems();

	/**
	 * Returns the meta object for the reference list '{@link saddlebar.model.commission.Piece#getNeighbours <em>Neighbours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Neighbours</em>'.
	 * @see saddlebar.model.commission.Piece#getNeighbours()
	 * @see #getPiece()
	 * @generated
	 */
	EReference getPiece_Neighbours();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.Piece#getGlass <em>Glass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Glass</em>'.
	 * @see saddlebar.model.commission.Piece#getGlass()
	 * @see #getPiece()
	 * @generated
	 */
	EReference getPiece_Glass();

	/**
	 * Returns the meta object for the reference list '{@link saddlebar.model.commission.Piece#getChoices <em>Choices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Choices</em>'.
	 * @see saddlebar.model.commission.Piece#getChoices()
	 * @see #getPiece()
	 * @generated
	 */
	EReference getPiece_Choices();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getState <em>State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>State</em>'.
	 * @see saddlebar.model.commission.Piece#getState()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_State();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#isRetired <em>Retired</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Retired</em>'.
	 * @see saddlebar.model.commission.Piece#isRetired()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_Retired();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see saddlebar.model.commission.Piece#getNote()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_Note();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#getGroup <em>Group</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Group</em>'.
	 * @see saddlebar.model.commission.Piece#getGroup()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_Group();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#isLocked <em>Locked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Locked</em>'.
	 * @see saddlebar.model.commission.Piece#isLocked()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_Locked();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Piece#isNumberedByHand <em>Numbered By Hand</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Numbered By Hand</em>'.
	 * @see saddlebar.model.commission.Piece#isNumberedByHand()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_NumberedByHand();

	/**
	 * Returns the meta object for the reference list '{@link saddlebar.model.commission.Piece#getCameFrom <em>Came From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Came From</em>'.
	 * @see saddlebar.model.commission.Piece#getCameFrom()
	 * @see #getPiece()
	 * @generated
	 */
	EReference getPiece_CameFrom();

	/**
	 * Returns the meta object for the reference list '{@link saddlebar.model.commission.Piece#getBecame <em>Became</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Became</em>'.
	 * @see saddlebar.model.commission.Piece#getBecame()
	 * @see #getPiece()
	 * @generated
	 */
	EReference getPiece_Became();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.DesignLayer <em>Design Layer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Design Layer</em>'.
	 * @see saddlebar.model.commission.DesignLayer
	 * @generated
	 */
	EClass getDesignLayer();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.DesignLayer#getPanel <em>Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Panel</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getPanel()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EReference getDesignLayer_Panel();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.DesignLayer#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getRole()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EAttribute getDesignLayer_Role();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.DesignLayer#getArtLayer <em>Art Layer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Art Layer</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getArtLayer()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EAttribute getDesignLayer_ArtLayer();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.DesignLayer#getFace <em>Face</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Face</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getFace()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EAttribute getDesignLayer_Face();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.DesignLayer#getPaint <em>Paint</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Paint</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getPaint()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EReference getDesignLayer_Paint();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.DesignLayer#getMedium <em>Medium</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Medium</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getMedium()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EReference getDesignLayer_Medium();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.DesignLayer#getMesh <em>Mesh</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Mesh</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getMesh()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EReference getDesignLayer_Mesh();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.DesignLayer#getSchedule <em>Schedule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Schedule</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getSchedule()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EReference getDesignLayer_Schedule();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.DesignLayer#getFiringOrder <em>Firing Order</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Firing Order</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getFiringOrder()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EAttribute getDesignLayer_FiringOrder();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.DesignLayer#getBleedMm <em>Bleed Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bleed Mm</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getBleedMm()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EAttribute getDesignLayer_BleedMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.DesignLayer#getSightLine <em>Sight Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sight Line</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getSightLine()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EAttribute getDesignLayer_SightLine();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.DesignLayer#getSightLineMm <em>Sight Line Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sight Line Mm</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getSightLineMm()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EAttribute getDesignLayer_SightLineMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.DesignLayer#isByHand <em>By Hand</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By Hand</em>'.
	 * @see saddlebar.model.commission.DesignLayer#isByHand()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EAttribute getDesignLayer_ByHand();

	/**
	 * Returns the meta object for the containment reference '{@link saddlebar.model.commission.DesignLayer#getRecipe <em>Recipe</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Recipe</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getRecipe()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EReference getDesignLayer_Recipe();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.DesignLayer#getStencils <em>Stencils</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Stencils</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getStencils()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EReference getDesignLayer_Stencils();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.DesignLayer#getState <em>State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>State</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getState()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EAttribute getDesignLayer_State();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.DesignLayer#getContentKey <em>Content Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Content Key</em>'.
	 * @see saddlebar.model.commission.DesignLayer#getContentKey()
	 * @see #getDesignLayer()
	 * @generated
	 */
	EAttribute getDesignLayer_ContentKey();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.StencilRecipe <em>Stencil Recipe</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stencil Recipe</em>'.
	 * @see saddlebar.model.commission.StencilRecipe
	 * @generated
	 */
	EClass getStencilRecipe();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.StencilRecipe#getLayer <em>Layer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Layer</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getLayer()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EReference getStencilRecipe_Layer();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getMethod <em>Method</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Method</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getMethod()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_Method();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getDpi <em>Dpi</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dpi</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getDpi()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_Dpi();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getLpi <em>Lpi</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lpi</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getLpi()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_Lpi();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getAngleDeg <em>Angle Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Angle Deg</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getAngleDeg()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_AngleDeg();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getDot <em>Dot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dot</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getDot()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_Dot();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getDotMm <em>Dot Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dot Mm</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getDotMm()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_DotMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getFilter <em>Filter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Filter</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getFilter()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_Filter();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getSeed <em>Seed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Seed</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getSeed()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_Seed();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getToneMode <em>Tone Mode</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tone Mode</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getToneMode()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_ToneMode();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getToneFrom <em>Tone From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tone From</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getToneFrom()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_ToneFrom();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getToneTo <em>Tone To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tone To</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getToneTo()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_ToneTo();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.StencilRecipe#getCalibration <em>Calibration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Calibration</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getCalibration()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EReference getStencilRecipe_Calibration();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getEndLow <em>End Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>End Low</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getEndLow()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_EndLow();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getEndHigh <em>End High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>End High</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getEndHigh()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_EndHigh();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getEndRule <em>End Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>End Rule</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getEndRule()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_EndRule();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getProcessKey <em>Process Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Process Key</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getProcessKey()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_ProcessKey();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getMirror <em>Mirror</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mirror</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getMirror()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_Mirror();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getOpenMm <em>Open Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Open Mm</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getOpenMm()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_OpenMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getBridgeMm <em>Bridge Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bridge Mm</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getBridgeMm()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_BridgeMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getCourse <em>Course</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Course</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getCourse()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_Course();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getCourseLayer <em>Course Layer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Course Layer</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getCourseLayer()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_CourseLayer();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getNoiseSide <em>Noise Side</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Noise Side</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getNoiseSide()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_NoiseSide();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getClump <em>Clump</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clump</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getClump()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_Clump();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getSupercell <em>Supercell</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Supercell</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getSupercell()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_Supercell();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getCurve <em>Curve</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Curve</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getCurve()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_Curve();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilRecipe#getTrapMm <em>Trap Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Trap Mm</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getTrapMm()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EAttribute getStencilRecipe_TrapMm();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.StencilRecipe#getMends <em>Mends</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Mends</em>'.
	 * @see saddlebar.model.commission.StencilRecipe#getMends()
	 * @see #getStencilRecipe()
	 * @generated
	 */
	EReference getStencilRecipe_Mends();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.MendedPlace <em>Mended Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Mended Place</em>'.
	 * @see saddlebar.model.commission.MendedPlace
	 * @generated
	 */
	EClass getMendedPlace();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.MendedPlace#getRecipe <em>Recipe</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Recipe</em>'.
	 * @see saddlebar.model.commission.MendedPlace#getRecipe()
	 * @see #getMendedPlace()
	 * @generated
	 */
	EReference getMendedPlace_Recipe();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MendedPlace#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see saddlebar.model.commission.MendedPlace#getKind()
	 * @see #getMendedPlace()
	 * @generated
	 */
	EAttribute getMendedPlace_Kind();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MendedPlace#getXMm <em>XMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>XMm</em>'.
	 * @see saddlebar.model.commission.MendedPlace#getXMm()
	 * @see #getMendedPlace()
	 * @generated
	 */
	EAttribute getMendedPlace_XMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MendedPlace#getYMm <em>YMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>YMm</em>'.
	 * @see saddlebar.model.commission.MendedPlace#getYMm()
	 * @see #getMendedPlace()
	 * @generated
	 */
	EAttribute getMendedPlace_YMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MendedPlace#getWidthMm <em>Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width Mm</em>'.
	 * @see saddlebar.model.commission.MendedPlace#getWidthMm()
	 * @see #getMendedPlace()
	 * @generated
	 */
	EAttribute getMendedPlace_WidthMm();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.AcceptedMend <em>Accepted Mend</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Accepted Mend</em>'.
	 * @see saddlebar.model.commission.AcceptedMend
	 * @generated
	 */
	EClass getAcceptedMend();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.AcceptedMend#getPanel <em>Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Panel</em>'.
	 * @see saddlebar.model.commission.AcceptedMend#getPanel()
	 * @see #getAcceptedMend()
	 * @generated
	 */
	EReference getAcceptedMend_Panel();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.AcceptedMend#getKey <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Key</em>'.
	 * @see saddlebar.model.commission.AcceptedMend#getKey()
	 * @see #getAcceptedMend()
	 * @generated
	 */
	EAttribute getAcceptedMend_Key();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.AcceptedMend#getWords <em>Words</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Words</em>'.
	 * @see saddlebar.model.commission.AcceptedMend#getWords()
	 * @see #getAcceptedMend()
	 * @generated
	 */
	EAttribute getAcceptedMend_Words();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.AcceptedMend#getXMm <em>XMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>XMm</em>'.
	 * @see saddlebar.model.commission.AcceptedMend#getXMm()
	 * @see #getAcceptedMend()
	 * @generated
	 */
	EAttribute getAcceptedMend_XMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.AcceptedMend#getYMm <em>YMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>YMm</em>'.
	 * @see saddlebar.model.commission.AcceptedMend#getYMm()
	 * @see #getAcceptedMend()
	 * @generated
	 */
	EAttribute getAcceptedMend_YMm();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.JoinRule <em>Join Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Join Rule</em>'.
	 * @see saddlebar.model.commission.JoinRule
	 * @generated
	 */
	EClass getJoinRule();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.JoinRule#getPanel <em>Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Panel</em>'.
	 * @see saddlebar.model.commission.JoinRule#getPanel()
	 * @see #getJoinRule()
	 * @generated
	 */
	EReference getJoinRule_Panel();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinRule#getArtLayer <em>Art Layer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Art Layer</em>'.
	 * @see saddlebar.model.commission.JoinRule#getArtLayer()
	 * @see #getJoinRule()
	 * @generated
	 */
	EAttribute getJoinRule_ArtLayer();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.JoinRule#getFirst <em>First</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>First</em>'.
	 * @see saddlebar.model.commission.JoinRule#getFirst()
	 * @see #getJoinRule()
	 * @generated
	 */
	EReference getJoinRule_First();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.JoinRule#getSecond <em>Second</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Second</em>'.
	 * @see saddlebar.model.commission.JoinRule#getSecond()
	 * @see #getJoinRule()
	 * @generated
	 */
	EReference getJoinRule_Second();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinRule#getJoin <em>Join</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Join</em>'.
	 * @see saddlebar.model.commission.JoinRule#getJoin()
	 * @see #getJoinRule()
	 * @generated
	 */
	EAttribute getJoinRule_Join();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.JoinRule#getJoinStock <em>Join Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Join Stock</em>'.
	 * @see saddlebar.model.commission.JoinRule#getJoinStock()
	 * @see #getJoinRule()
	 * @generated
	 */
	EReference getJoinRule_JoinStock();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.JoinRule#getGapMm <em>Gap Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gap Mm</em>'.
	 * @see saddlebar.model.commission.JoinRule#getGapMm()
	 * @see #getJoinRule()
	 * @generated
	 */
	EAttribute getJoinRule_GapMm();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Stencil <em>Stencil</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stencil</em>'.
	 * @see saddlebar.model.commission.Stencil
	 * @generated
	 */
	EClass getStencil();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.Stencil#getLayer <em>Layer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Layer</em>'.
	 * @see saddlebar.model.commission.Stencil#getLayer()
	 * @see #getStencil()
	 * @generated
	 */
	EReference getStencil_Layer();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getNumber <em>Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Number</em>'.
	 * @see saddlebar.model.commission.Stencil#getNumber()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_Number();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.Stencil#getFrame <em>Frame</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Frame</em>'.
	 * @see saddlebar.model.commission.Stencil#getFrame()
	 * @see #getStencil()
	 * @generated
	 */
	EReference getStencil_Frame();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getWidthMm <em>Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width Mm</em>'.
	 * @see saddlebar.model.commission.Stencil#getWidthMm()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_WidthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getHeightMm <em>Height Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Mm</em>'.
	 * @see saddlebar.model.commission.Stencil#getHeightMm()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_HeightMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getOriginXMm <em>Origin XMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Origin XMm</em>'.
	 * @see saddlebar.model.commission.Stencil#getOriginXMm()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_OriginXMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getOriginYMm <em>Origin YMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Origin YMm</em>'.
	 * @see saddlebar.model.commission.Stencil#getOriginYMm()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_OriginYMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getWidthPx <em>Width Px</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width Px</em>'.
	 * @see saddlebar.model.commission.Stencil#getWidthPx()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_WidthPx();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getHeightPx <em>Height Px</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Px</em>'.
	 * @see saddlebar.model.commission.Stencil#getHeightPx()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_HeightPx();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getPrints <em>Prints</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Prints</em>'.
	 * @see saddlebar.model.commission.Stencil#getPrints()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_Prints();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Stencil#getPieces <em>Pieces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Pieces</em>'.
	 * @see saddlebar.model.commission.Stencil#getPieces()
	 * @see #getStencil()
	 * @generated
	 */
	EReference getStencil_Pieces();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Stencil#getFiles <em>Files</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Files</em>'.
	 * @see saddlebar.model.commission.Stencil#getFiles()
	 * @see #getStencil()
	 * @generated
	 */
	EReference getStencil_Files();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see saddlebar.model.commission.Stencil#getSha256()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_Sha256();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getContentKey <em>Content Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Content Key</em>'.
	 * @see saddlebar.model.commission.Stencil#getContentKey()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_ContentKey();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getCoverage <em>Coverage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coverage</em>'.
	 * @see saddlebar.model.commission.Stencil#getCoverage()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_Coverage();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getTooFine <em>Too Fine</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Too Fine</em>'.
	 * @see saddlebar.model.commission.Stencil#getTooFine()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_TooFine();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#getBridgesLost <em>Bridges Lost</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bridges Lost</em>'.
	 * @see saddlebar.model.commission.Stencil#getBridgesLost()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_BridgesLost();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Stencil#isRetired <em>Retired</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Retired</em>'.
	 * @see saddlebar.model.commission.Stencil#isRetired()
	 * @see #getStencil()
	 * @generated
	 */
	EAttribute getStencil_Retired();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.StencilPiece <em>Stencil Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stencil Piece</em>'.
	 * @see saddlebar.model.commission.StencilPiece
	 * @generated
	 */
	EClass getStencilPiece();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.StencilPiece#getStencil <em>Stencil</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Stencil</em>'.
	 * @see saddlebar.model.commission.StencilPiece#getStencil()
	 * @see #getStencilPiece()
	 * @generated
	 */
	EReference getStencilPiece_Stencil();

	/**
	 * Returns the meta object for the reference '{@link saddlebar.model.commission.StencilPiece#getPiece <em>Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Piece</em>'.
	 * @see saddlebar.model.commission.StencilPiece#getPiece()
	 * @see #getStencilPiece()
	 * @generated
	 */
	EReference getStencilPiece_Piece();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilPiece#getXMm <em>XMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>XMm</em>'.
	 * @see saddlebar.model.commission.StencilPiece#getXMm()
	 * @see #getStencilPiece()
	 * @generated
	 */
	EAttribute getStencilPiece_XMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilPiece#getYMm <em>YMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>YMm</em>'.
	 * @see saddlebar.model.commission.StencilPiece#getYMm()
	 * @see #getStencilPiece()
	 * @generated
	 */
	EAttribute getStencilPiece_YMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilPiece#getRotationDeg <em>Rotation Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rotation Deg</em>'.
	 * @see saddlebar.model.commission.StencilPiece#getRotationDeg()
	 * @see #getStencilPiece()
	 * @generated
	 */
	EAttribute getStencilPiece_RotationDeg();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilPiece#getSpot <em>Spot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Spot</em>'.
	 * @see saddlebar.model.commission.StencilPiece#getSpot()
	 * @see #getStencilPiece()
	 * @generated
	 */
	EAttribute getStencilPiece_Spot();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilPiece#getPrints <em>Prints</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Prints</em>'.
	 * @see saddlebar.model.commission.StencilPiece#getPrints()
	 * @see #getStencilPiece()
	 * @generated
	 */
	EAttribute getStencilPiece_Prints();

	/**
	 * Returns the meta object for class '{@link java.util.Map.Entry <em>Setting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Setting</em>'.
	 * @see java.util.Map.Entry
	 * @model keyDataType="org.eclipse.emf.ecore.EString" keyRequired="true"
	 *        valueDataType="org.eclipse.emf.ecore.EString" valueRequired="true"
	 * @generated
	 */
	EClass getSetting();

	/**
	 * Returns the meta object for the attribute '{@link java.util.Map.Entry <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Key</em>'.
	 * @see java.util.Map.Entry
	 * @see #getSetting()
	 * @generated
	 */
	EAttribute getSetting_Key();

	/**
	 * Returns the meta object for the attribute '{@link java.util.Map.Entry <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see java.util.Map.Entry
	 * @see #getSetting()
	 * @generated
	 */
	EAttribute getSetting_Value();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.MakingRecord <em>Making Record</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Making Record</em>'.
	 * @see saddlebar.model.commission.MakingRecord
	 * @generated
	 */
	EClass getMakingRecord();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MakingRecord#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see saddlebar.model.commission.MakingRecord#getId()
	 * @see #getMakingRecord()
	 * @generated
	 */
	EAttribute getMakingRecord_Id();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MakingRecord#getTime <em>Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Time</em>'.
	 * @see saddlebar.model.commission.MakingRecord#getTime()
	 * @see #getMakingRecord()
	 * @generated
	 */
	EAttribute getMakingRecord_Time();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MakingRecord#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see saddlebar.model.commission.MakingRecord#getKind()
	 * @see #getMakingRecord()
	 * @generated
	 */
	EAttribute getMakingRecord_Kind();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MakingRecord#getWho <em>Who</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Who</em>'.
	 * @see saddlebar.model.commission.MakingRecord#getWho()
	 * @see #getMakingRecord()
	 * @generated
	 */
	EAttribute getMakingRecord_Who();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MakingRecord#getWriter <em>Writer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Writer</em>'.
	 * @see saddlebar.model.commission.MakingRecord#getWriter()
	 * @see #getMakingRecord()
	 * @generated
	 */
	EAttribute getMakingRecord_Writer();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.MakingRecord#getUsed <em>Used</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Used</em>'.
	 * @see saddlebar.model.commission.MakingRecord#getUsed()
	 * @see #getMakingRecord()
	 * @generated
	 */
	EAttribute getMakingRecord_Used();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.MakingRecord#getMade <em>Made</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Made</em>'.
	 * @see saddlebar.model.commission.MakingRecord#getMade()
	 * @see #getMakingRecord()
	 * @generated
	 */
	EAttribute getMakingRecord_Made();

	/**
	 * Returns the meta object for the map '{@link saddlebar.model.commission.MakingRecord#getSettings <em>Settings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the map '<em>Settings</em>'.
	 * @see saddlebar.model.commission.MakingRecord#getSettings()
	 * @see #getMakingRecord()
	 * @generated
	 */
	EReference getMakingRecord_Settings();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.MakingRecord#getSupersedes <em>Supersedes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Supersedes</em>'.
	 * @see saddlebar.model.commission.MakingRecord#getSupersedes()
	 * @see #getMakingRecord()
	 * @generated
	 */
	EAttribute getMakingRecord_Supersedes();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MakingRecord#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see saddlebar.model.commission.MakingRecord#getNote()
	 * @see #getMakingRecord()
	 * @generated
	 */
	EAttribute getMakingRecord_Note();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MakingRecord#getFile <em>File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>File</em>'.
	 * @see saddlebar.model.commission.MakingRecord#getFile()
	 * @see #getMakingRecord()
	 * @generated
	 */
	EAttribute getMakingRecord_File();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.MakingRecord#getLine <em>Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Line</em>'.
	 * @see saddlebar.model.commission.MakingRecord#getLine()
	 * @see #getMakingRecord()
	 * @generated
	 */
	EAttribute getMakingRecord_Line();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.ArtworkBrought <em>Artwork Brought</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Artwork Brought</em>'.
	 * @see saddlebar.model.commission.ArtworkBrought
	 * @generated
	 */
	EClass getArtworkBrought();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkBrought#getWindowId <em>Window Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Window Id</em>'.
	 * @see saddlebar.model.commission.ArtworkBrought#getWindowId()
	 * @see #getArtworkBrought()
	 * @generated
	 */
	EAttribute getArtworkBrought_WindowId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkBrought#getPanelId <em>Panel Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Panel Id</em>'.
	 * @see saddlebar.model.commission.ArtworkBrought#getPanelId()
	 * @see #getArtworkBrought()
	 * @generated
	 */
	EAttribute getArtworkBrought_PanelId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkBrought#getArtworkFile <em>Artwork File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Artwork File</em>'.
	 * @see saddlebar.model.commission.ArtworkBrought#getArtworkFile()
	 * @see #getArtworkBrought()
	 * @generated
	 */
	EAttribute getArtworkBrought_ArtworkFile();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkBrought#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see saddlebar.model.commission.ArtworkBrought#getSha256()
	 * @see #getArtworkBrought()
	 * @generated
	 */
	EAttribute getArtworkBrought_Sha256();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkBrought#getRevision <em>Revision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Revision</em>'.
	 * @see saddlebar.model.commission.ArtworkBrought#getRevision()
	 * @see #getArtworkBrought()
	 * @generated
	 */
	EAttribute getArtworkBrought_Revision();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ArtworkBrought#getWidthMm <em>Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width Mm</em>'.
	 * @see saddlebar.model.commission.ArtworkBrought#getWidthMm()
	 * @see #getArtworkBrought()
	 * @generated
	 */
	EAttribute getArtworkBrought_WidthMm();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.PiecesMade <em>Pieces Made</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pieces Made</em>'.
	 * @see saddlebar.model.commission.PiecesMade
	 * @generated
	 */
	EClass getPiecesMade();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PiecesMade#getWindowId <em>Window Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Window Id</em>'.
	 * @see saddlebar.model.commission.PiecesMade#getWindowId()
	 * @see #getPiecesMade()
	 * @generated
	 */
	EAttribute getPiecesMade_WindowId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PiecesMade#getPanelId <em>Panel Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Panel Id</em>'.
	 * @see saddlebar.model.commission.PiecesMade#getPanelId()
	 * @see #getPiecesMade()
	 * @generated
	 */
	EAttribute getPiecesMade_PanelId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PiecesMade#getInputSha256 <em>Input Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Input Sha256</em>'.
	 * @see saddlebar.model.commission.PiecesMade#getInputSha256()
	 * @see #getPiecesMade()
	 * @generated
	 */
	EAttribute getPiecesMade_InputSha256();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PiecesMade#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see saddlebar.model.commission.PiecesMade#getSha256()
	 * @see #getPiecesMade()
	 * @generated
	 */
	EAttribute getPiecesMade_Sha256();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PiecesMade#getPieces <em>Pieces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pieces</em>'.
	 * @see saddlebar.model.commission.PiecesMade#getPieces()
	 * @see #getPiecesMade()
	 * @generated
	 */
	EAttribute getPiecesMade_Pieces();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.PiecesMade#getFiles <em>Files</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Files</em>'.
	 * @see saddlebar.model.commission.PiecesMade#getFiles()
	 * @see #getPiecesMade()
	 * @generated
	 */
	EReference getPiecesMade_Files();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.StencilMade <em>Stencil Made</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stencil Made</em>'.
	 * @see saddlebar.model.commission.StencilMade
	 * @generated
	 */
	EClass getStencilMade();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilMade#getWindowId <em>Window Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Window Id</em>'.
	 * @see saddlebar.model.commission.StencilMade#getWindowId()
	 * @see #getStencilMade()
	 * @generated
	 */
	EAttribute getStencilMade_WindowId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilMade#getLayerId <em>Layer Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Layer Id</em>'.
	 * @see saddlebar.model.commission.StencilMade#getLayerId()
	 * @see #getStencilMade()
	 * @generated
	 */
	EAttribute getStencilMade_LayerId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilMade#getStencilId <em>Stencil Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stencil Id</em>'.
	 * @see saddlebar.model.commission.StencilMade#getStencilId()
	 * @see #getStencilMade()
	 * @generated
	 */
	EAttribute getStencilMade_StencilId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilMade#getPaintId <em>Paint Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Paint Id</em>'.
	 * @see saddlebar.model.commission.StencilMade#getPaintId()
	 * @see #getStencilMade()
	 * @generated
	 */
	EAttribute getStencilMade_PaintId();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.StencilMade#getPieceIds <em>Piece Ids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Piece Ids</em>'.
	 * @see saddlebar.model.commission.StencilMade#getPieceIds()
	 * @see #getStencilMade()
	 * @generated
	 */
	EAttribute getStencilMade_PieceIds();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilMade#getInputSha256 <em>Input Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Input Sha256</em>'.
	 * @see saddlebar.model.commission.StencilMade#getInputSha256()
	 * @see #getStencilMade()
	 * @generated
	 */
	EAttribute getStencilMade_InputSha256();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilMade#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see saddlebar.model.commission.StencilMade#getSha256()
	 * @see #getStencilMade()
	 * @generated
	 */
	EAttribute getStencilMade_Sha256();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilMade#getCoverage <em>Coverage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coverage</em>'.
	 * @see saddlebar.model.commission.StencilMade#getCoverage()
	 * @see #getStencilMade()
	 * @generated
	 */
	EAttribute getStencilMade_Coverage();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilMade#getTooFine <em>Too Fine</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Too Fine</em>'.
	 * @see saddlebar.model.commission.StencilMade#getTooFine()
	 * @see #getStencilMade()
	 * @generated
	 */
	EAttribute getStencilMade_TooFine();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilMade#getBridgesLost <em>Bridges Lost</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bridges Lost</em>'.
	 * @see saddlebar.model.commission.StencilMade#getBridgesLost()
	 * @see #getStencilMade()
	 * @generated
	 */
	EAttribute getStencilMade_BridgesLost();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilMade#getWidthPx <em>Width Px</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width Px</em>'.
	 * @see saddlebar.model.commission.StencilMade#getWidthPx()
	 * @see #getStencilMade()
	 * @generated
	 */
	EAttribute getStencilMade_WidthPx();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StencilMade#getHeightPx <em>Height Px</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Px</em>'.
	 * @see saddlebar.model.commission.StencilMade#getHeightPx()
	 * @see #getStencilMade()
	 * @generated
	 */
	EAttribute getStencilMade_HeightPx();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.StencilMade#getFiles <em>Files</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Files</em>'.
	 * @see saddlebar.model.commission.StencilMade#getFiles()
	 * @see #getStencilMade()
	 * @generated
	 */
	EReference getStencilMade_Files();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.SheetMade <em>Sheet Made</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sheet Made</em>'.
	 * @see saddlebar.model.commission.SheetMade
	 * @generated
	 */
	EClass getSheetMade();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SheetMade#getSheetId <em>Sheet Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Id</em>'.
	 * @see saddlebar.model.commission.SheetMade#getSheetId()
	 * @see #getSheetMade()
	 * @generated
	 */
	EAttribute getSheetMade_SheetId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SheetMade#getNumber <em>Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Number</em>'.
	 * @see saddlebar.model.commission.SheetMade#getNumber()
	 * @see #getSheetMade()
	 * @generated
	 */
	EAttribute getSheetMade_Number();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.SheetMade#getStencilIds <em>Stencil Ids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Stencil Ids</em>'.
	 * @see saddlebar.model.commission.SheetMade#getStencilIds()
	 * @see #getSheetMade()
	 * @generated
	 */
	EAttribute getSheetMade_StencilIds();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SheetMade#getInputSha256 <em>Input Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Input Sha256</em>'.
	 * @see saddlebar.model.commission.SheetMade#getInputSha256()
	 * @see #getSheetMade()
	 * @generated
	 */
	EAttribute getSheetMade_InputSha256();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.SheetMade#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see saddlebar.model.commission.SheetMade#getSha256()
	 * @see #getSheetMade()
	 * @generated
	 */
	EAttribute getSheetMade_Sha256();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.SheetMade#getFiles <em>Files</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Files</em>'.
	 * @see saddlebar.model.commission.SheetMade#getFiles()
	 * @see #getSheetMade()
	 * @generated
	 */
	EReference getSheetMade_Files();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.DocumentMade <em>Document Made</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Document Made</em>'.
	 * @see saddlebar.model.commission.DocumentMade
	 * @generated
	 */
	EClass getDocumentMade();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.DocumentMade#getWhat <em>What</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>What</em>'.
	 * @see saddlebar.model.commission.DocumentMade#getWhat()
	 * @see #getDocumentMade()
	 * @generated
	 */
	EAttribute getDocumentMade_What();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.DocumentMade#getFiles <em>Files</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Files</em>'.
	 * @see saddlebar.model.commission.DocumentMade#getFiles()
	 * @see #getDocumentMade()
	 * @generated
	 */
	EReference getDocumentMade_Files();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.ScreenLoad <em>Screen Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Screen Load</em>'.
	 * @see saddlebar.model.commission.ScreenLoad
	 * @generated
	 */
	EClass getScreenLoad();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ScreenLoad#getFrameId <em>Frame Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frame Id</em>'.
	 * @see saddlebar.model.commission.ScreenLoad#getFrameId()
	 * @see #getScreenLoad()
	 * @generated
	 */
	EAttribute getScreenLoad_FrameId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ScreenLoad#getSheetId <em>Sheet Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheet Id</em>'.
	 * @see saddlebar.model.commission.ScreenLoad#getSheetId()
	 * @see #getScreenLoad()
	 * @generated
	 */
	EAttribute getScreenLoad_SheetId();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.ScreenLoad#getStencilIds <em>Stencil Ids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Stencil Ids</em>'.
	 * @see saddlebar.model.commission.ScreenLoad#getStencilIds()
	 * @see #getScreenLoad()
	 * @generated
	 */
	EAttribute getScreenLoad_StencilIds();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ScreenLoad#getProcessKey <em>Process Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Process Key</em>'.
	 * @see saddlebar.model.commission.ScreenLoad#getProcessKey()
	 * @see #getScreenLoad()
	 * @generated
	 */
	EAttribute getScreenLoad_ProcessKey();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ScreenLoad#getPressC <em>Press C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Press C</em>'.
	 * @see saddlebar.model.commission.ScreenLoad#getPressC()
	 * @see #getScreenLoad()
	 * @generated
	 */
	EAttribute getScreenLoad_PressC();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ScreenLoad#getPressMin <em>Press Min</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Press Min</em>'.
	 * @see saddlebar.model.commission.ScreenLoad#getPressMin()
	 * @see #getScreenLoad()
	 * @generated
	 */
	EAttribute getScreenLoad_PressMin();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ScreenLoad#getCoolMin <em>Cool Min</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cool Min</em>'.
	 * @see saddlebar.model.commission.ScreenLoad#getCoolMin()
	 * @see #getScreenLoad()
	 * @generated
	 */
	EAttribute getScreenLoad_CoolMin();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Reclaim <em>Reclaim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Reclaim</em>'.
	 * @see saddlebar.model.commission.Reclaim
	 * @generated
	 */
	EClass getReclaim();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.Reclaim#getFrameIds <em>Frame Ids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Frame Ids</em>'.
	 * @see saddlebar.model.commission.Reclaim#getFrameIds()
	 * @see #getReclaim()
	 * @generated
	 */
	EAttribute getReclaim_FrameIds();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.Reclaim#getScreenLoadIds <em>Screen Load Ids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Screen Load Ids</em>'.
	 * @see saddlebar.model.commission.Reclaim#getScreenLoadIds()
	 * @see #getReclaim()
	 * @generated
	 */
	EAttribute getReclaim_ScreenLoadIds();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Reclaim#getCleaner <em>Cleaner</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cleaner</em>'.
	 * @see saddlebar.model.commission.Reclaim#getCleaner()
	 * @see #getReclaim()
	 * @generated
	 */
	EAttribute getReclaim_Cleaner();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.PaintMix <em>Paint Mix</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Paint Mix</em>'.
	 * @see saddlebar.model.commission.PaintMix
	 * @generated
	 */
	EClass getPaintMix();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaintMix#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see saddlebar.model.commission.PaintMix#getName()
	 * @see #getPaintMix()
	 * @generated
	 */
	EAttribute getPaintMix_Name();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaintMix#getPaintId <em>Paint Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Paint Id</em>'.
	 * @see saddlebar.model.commission.PaintMix#getPaintId()
	 * @see #getPaintMix()
	 * @generated
	 */
	EAttribute getPaintMix_PaintId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaintMix#getLotId <em>Lot Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lot Id</em>'.
	 * @see saddlebar.model.commission.PaintMix#getLotId()
	 * @see #getPaintMix()
	 * @generated
	 */
	EAttribute getPaintMix_LotId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaintMix#getMediumId <em>Medium Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Medium Id</em>'.
	 * @see saddlebar.model.commission.PaintMix#getMediumId()
	 * @see #getPaintMix()
	 * @generated
	 */
	EAttribute getPaintMix_MediumId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaintMix#getPowderG <em>Powder G</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Powder G</em>'.
	 * @see saddlebar.model.commission.PaintMix#getPowderG()
	 * @see #getPaintMix()
	 * @generated
	 */
	EAttribute getPaintMix_PowderG();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PaintMix#getMediumG <em>Medium G</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Medium G</em>'.
	 * @see saddlebar.model.commission.PaintMix#getMediumG()
	 * @see #getPaintMix()
	 * @generated
	 */
	EAttribute getPaintMix_MediumG();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.PrintRun <em>Print Run</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Print Run</em>'.
	 * @see saddlebar.model.commission.PrintRun
	 * @generated
	 */
	EClass getPrintRun();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PrintRun#getScreenLoadId <em>Screen Load Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Screen Load Id</em>'.
	 * @see saddlebar.model.commission.PrintRun#getScreenLoadId()
	 * @see #getPrintRun()
	 * @generated
	 */
	EAttribute getPrintRun_ScreenLoadId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PrintRun#getStencilId <em>Stencil Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stencil Id</em>'.
	 * @see saddlebar.model.commission.PrintRun#getStencilId()
	 * @see #getPrintRun()
	 * @generated
	 */
	EAttribute getPrintRun_StencilId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PrintRun#getMixId <em>Mix Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mix Id</em>'.
	 * @see saddlebar.model.commission.PrintRun#getMixId()
	 * @see #getPrintRun()
	 * @generated
	 */
	EAttribute getPrintRun_MixId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PrintRun#getWindowId <em>Window Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Window Id</em>'.
	 * @see saddlebar.model.commission.PrintRun#getWindowId()
	 * @see #getPrintRun()
	 * @generated
	 */
	EAttribute getPrintRun_WindowId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PrintRun#getLayerId <em>Layer Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Layer Id</em>'.
	 * @see saddlebar.model.commission.PrintRun#getLayerId()
	 * @see #getPrintRun()
	 * @generated
	 */
	EAttribute getPrintRun_LayerId();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.PrintRun#getPieceIds <em>Piece Ids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Piece Ids</em>'.
	 * @see saddlebar.model.commission.PrintRun#getPieceIds()
	 * @see #getPrintRun()
	 * @generated
	 */
	EAttribute getPrintRun_PieceIds();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PrintRun#getPulls <em>Pulls</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pulls</em>'.
	 * @see saddlebar.model.commission.PrintRun#getPulls()
	 * @see #getPrintRun()
	 * @generated
	 */
	EAttribute getPrintRun_Pulls();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PrintRun#getTemperatureC <em>Temperature C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Temperature C</em>'.
	 * @see saddlebar.model.commission.PrintRun#getTemperatureC()
	 * @see #getPrintRun()
	 * @generated
	 */
	EAttribute getPrintRun_TemperatureC();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PrintRun#getHumidity <em>Humidity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Humidity</em>'.
	 * @see saddlebar.model.commission.PrintRun#getHumidity()
	 * @see #getPrintRun()
	 * @generated
	 */
	EAttribute getPrintRun_Humidity();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.PrintRun#getBed <em>Bed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bed</em>'.
	 * @see saddlebar.model.commission.PrintRun#getBed()
	 * @see #getPrintRun()
	 * @generated
	 */
	EAttribute getPrintRun_Bed();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Firing <em>Firing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Firing</em>'.
	 * @see saddlebar.model.commission.Firing
	 * @generated
	 */
	EClass getFiring();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Firing#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see saddlebar.model.commission.Firing#getName()
	 * @see #getFiring()
	 * @generated
	 */
	EAttribute getFiring_Name();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Firing#getKilnId <em>Kiln Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kiln Id</em>'.
	 * @see saddlebar.model.commission.Firing#getKilnId()
	 * @see #getFiring()
	 * @generated
	 */
	EAttribute getFiring_KilnId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Firing#getScheduleId <em>Schedule Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Schedule Id</em>'.
	 * @see saddlebar.model.commission.Firing#getScheduleId()
	 * @see #getFiring()
	 * @generated
	 */
	EAttribute getFiring_ScheduleId();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Firing#getSegments <em>Segments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Segments</em>'.
	 * @see saddlebar.model.commission.Firing#getSegments()
	 * @see #getFiring()
	 * @generated
	 */
	EReference getFiring_Segments();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.Firing#getLoad <em>Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Load</em>'.
	 * @see saddlebar.model.commission.Firing#getLoad()
	 * @see #getFiring()
	 * @generated
	 */
	EReference getFiring_Load();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Firing#getCurveFile <em>Curve File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Curve File</em>'.
	 * @see saddlebar.model.commission.Firing#getCurveFile()
	 * @see #getFiring()
	 * @generated
	 */
	EAttribute getFiring_CurveFile();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Firing#getCurveSha256 <em>Curve Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Curve Sha256</em>'.
	 * @see saddlebar.model.commission.Firing#getCurveSha256()
	 * @see #getFiring()
	 * @generated
	 */
	EAttribute getFiring_CurveSha256();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Firing#getPeakC <em>Peak C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Peak C</em>'.
	 * @see saddlebar.model.commission.Firing#getPeakC()
	 * @see #getFiring()
	 * @generated
	 */
	EAttribute getFiring_PeakC();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Firing#getEnergyKwh <em>Energy Kwh</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Energy Kwh</em>'.
	 * @see saddlebar.model.commission.Firing#getEnergyKwh()
	 * @see #getFiring()
	 * @generated
	 */
	EAttribute getFiring_EnergyKwh();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.RunSegment <em>Run Segment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Run Segment</em>'.
	 * @see saddlebar.model.commission.RunSegment
	 * @generated
	 */
	EClass getRunSegment();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.RunSegment#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see saddlebar.model.commission.RunSegment#getName()
	 * @see #getRunSegment()
	 * @generated
	 */
	EAttribute getRunSegment_Name();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.RunSegment#getRateKPerH <em>Rate KPer H</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rate KPer H</em>'.
	 * @see saddlebar.model.commission.RunSegment#getRateKPerH()
	 * @see #getRunSegment()
	 * @generated
	 */
	EAttribute getRunSegment_RateKPerH();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.RunSegment#getTargetC <em>Target C</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Target C</em>'.
	 * @see saddlebar.model.commission.RunSegment#getTargetC()
	 * @see #getRunSegment()
	 * @generated
	 */
	EAttribute getRunSegment_TargetC();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.RunSegment#getSoakMin <em>Soak Min</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Soak Min</em>'.
	 * @see saddlebar.model.commission.RunSegment#getSoakMin()
	 * @see #getRunSegment()
	 * @generated
	 */
	EAttribute getRunSegment_SoakMin();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.RunSegment#isVent <em>Vent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vent</em>'.
	 * @see saddlebar.model.commission.RunSegment#isVent()
	 * @see #getRunSegment()
	 * @generated
	 */
	EAttribute getRunSegment_Vent();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.ShelfPlace <em>Shelf Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Shelf Place</em>'.
	 * @see saddlebar.model.commission.ShelfPlace
	 * @generated
	 */
	EClass getShelfPlace();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ShelfPlace#getWindowId <em>Window Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Window Id</em>'.
	 * @see saddlebar.model.commission.ShelfPlace#getWindowId()
	 * @see #getShelfPlace()
	 * @generated
	 */
	EAttribute getShelfPlace_WindowId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ShelfPlace#getPieceId <em>Piece Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Piece Id</em>'.
	 * @see saddlebar.model.commission.ShelfPlace#getPieceId()
	 * @see #getShelfPlace()
	 * @generated
	 */
	EAttribute getShelfPlace_PieceId();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.ShelfPlace#getLayerIds <em>Layer Ids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Layer Ids</em>'.
	 * @see saddlebar.model.commission.ShelfPlace#getLayerIds()
	 * @see #getShelfPlace()
	 * @generated
	 */
	EAttribute getShelfPlace_LayerIds();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ShelfPlace#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see saddlebar.model.commission.ShelfPlace#getPlace()
	 * @see #getShelfPlace()
	 * @generated
	 */
	EAttribute getShelfPlace_Place();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ShelfPlace#getShelf <em>Shelf</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shelf</em>'.
	 * @see saddlebar.model.commission.ShelfPlace#getShelf()
	 * @see #getShelfPlace()
	 * @generated
	 */
	EAttribute getShelfPlace_Shelf();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ShelfPlace#getXMm <em>XMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>XMm</em>'.
	 * @see saddlebar.model.commission.ShelfPlace#getXMm()
	 * @see #getShelfPlace()
	 * @generated
	 */
	EAttribute getShelfPlace_XMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ShelfPlace#getYMm <em>YMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>YMm</em>'.
	 * @see saddlebar.model.commission.ShelfPlace#getYMm()
	 * @see #getShelfPlace()
	 * @generated
	 */
	EAttribute getShelfPlace_YMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.ShelfPlace#getRotationDeg <em>Rotation Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rotation Deg</em>'.
	 * @see saddlebar.model.commission.ShelfPlace#getRotationDeg()
	 * @see #getShelfPlace()
	 * @generated
	 */
	EAttribute getShelfPlace_RotationDeg();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Glazing <em>Glazing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Glazing</em>'.
	 * @see saddlebar.model.commission.Glazing
	 * @generated
	 */
	EClass getGlazing();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Glazing#getWindowId <em>Window Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Window Id</em>'.
	 * @see saddlebar.model.commission.Glazing#getWindowId()
	 * @see #getGlazing()
	 * @generated
	 */
	EAttribute getGlazing_WindowId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Glazing#getPanelId <em>Panel Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Panel Id</em>'.
	 * @see saddlebar.model.commission.Glazing#getPanelId()
	 * @see #getGlazing()
	 * @generated
	 */
	EAttribute getGlazing_PanelId();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.Glazing#getPieceIds <em>Piece Ids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Piece Ids</em>'.
	 * @see saddlebar.model.commission.Glazing#getPieceIds()
	 * @see #getGlazing()
	 * @generated
	 */
	EAttribute getGlazing_PieceIds();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Glazing#getJoin <em>Join</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Join</em>'.
	 * @see saddlebar.model.commission.Glazing#getJoin()
	 * @see #getGlazing()
	 * @generated
	 */
	EAttribute getGlazing_Join();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Glazing#getMassKg <em>Mass Kg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass Kg</em>'.
	 * @see saddlebar.model.commission.Glazing#getMassKg()
	 * @see #getGlazing()
	 * @generated
	 */
	EAttribute getGlazing_MassKg();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Fixing <em>Fixing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Fixing</em>'.
	 * @see saddlebar.model.commission.Fixing
	 * @generated
	 */
	EClass getFixing();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Fixing#getWindowId <em>Window Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Window Id</em>'.
	 * @see saddlebar.model.commission.Fixing#getWindowId()
	 * @see #getFixing()
	 * @generated
	 */
	EAttribute getFixing_WindowId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Fixing#getPanelId <em>Panel Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Panel Id</em>'.
	 * @see saddlebar.model.commission.Fixing#getPanelId()
	 * @see #getFixing()
	 * @generated
	 */
	EAttribute getFixing_PanelId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Fixing#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see saddlebar.model.commission.Fixing#getPlace()
	 * @see #getFixing()
	 * @generated
	 */
	EAttribute getFixing_Place();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Defect <em>Defect</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Defect</em>'.
	 * @see saddlebar.model.commission.Defect
	 * @generated
	 */
	EClass getDefect();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Defect#getWindowId <em>Window Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Window Id</em>'.
	 * @see saddlebar.model.commission.Defect#getWindowId()
	 * @see #getDefect()
	 * @generated
	 */
	EAttribute getDefect_WindowId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Defect#getPieceId <em>Piece Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Piece Id</em>'.
	 * @see saddlebar.model.commission.Defect#getPieceId()
	 * @see #getDefect()
	 * @generated
	 */
	EAttribute getDefect_PieceId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Defect#getLayerId <em>Layer Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Layer Id</em>'.
	 * @see saddlebar.model.commission.Defect#getLayerId()
	 * @see #getDefect()
	 * @generated
	 */
	EAttribute getDefect_LayerId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Defect#getDefectKind <em>Defect Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Defect Kind</em>'.
	 * @see saddlebar.model.commission.Defect#getDefectKind()
	 * @see #getDefect()
	 * @generated
	 */
	EAttribute getDefect_DefectKind();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Defect#getFoundAt <em>Found At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Found At</em>'.
	 * @see saddlebar.model.commission.Defect#getFoundAt()
	 * @see #getDefect()
	 * @generated
	 */
	EAttribute getDefect_FoundAt();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Defect#getSeverity <em>Severity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Severity</em>'.
	 * @see saddlebar.model.commission.Defect#getSeverity()
	 * @see #getDefect()
	 * @generated
	 */
	EAttribute getDefect_Severity();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Defect#getXMm <em>XMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>XMm</em>'.
	 * @see saddlebar.model.commission.Defect#getXMm()
	 * @see #getDefect()
	 * @generated
	 */
	EAttribute getDefect_XMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Defect#getYMm <em>YMm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>YMm</em>'.
	 * @see saddlebar.model.commission.Defect#getYMm()
	 * @see #getDefect()
	 * @generated
	 */
	EAttribute getDefect_YMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Defect#getPhoto <em>Photo</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Photo</em>'.
	 * @see saddlebar.model.commission.Defect#getPhoto()
	 * @see #getDefect()
	 * @generated
	 */
	EAttribute getDefect_Photo();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Defect#getSuspectedCause <em>Suspected Cause</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Suspected Cause</em>'.
	 * @see saddlebar.model.commission.Defect#getSuspectedCause()
	 * @see #getDefect()
	 * @generated
	 */
	EAttribute getDefect_SuspectedCause();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Defect#getDisposition <em>Disposition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Disposition</em>'.
	 * @see saddlebar.model.commission.Defect#getDisposition()
	 * @see #getDefect()
	 * @generated
	 */
	EAttribute getDefect_Disposition();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Remake <em>Remake</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Remake</em>'.
	 * @see saddlebar.model.commission.Remake
	 * @generated
	 */
	EClass getRemake();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Remake#getWindowId <em>Window Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Window Id</em>'.
	 * @see saddlebar.model.commission.Remake#getWindowId()
	 * @see #getRemake()
	 * @generated
	 */
	EAttribute getRemake_WindowId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Remake#getPieceId <em>Piece Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Piece Id</em>'.
	 * @see saddlebar.model.commission.Remake#getPieceId()
	 * @see #getRemake()
	 * @generated
	 */
	EAttribute getRemake_PieceId();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.Remake#getLayerIds <em>Layer Ids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Layer Ids</em>'.
	 * @see saddlebar.model.commission.Remake#getLayerIds()
	 * @see #getRemake()
	 * @generated
	 */
	EAttribute getRemake_LayerIds();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Remake#getDefectId <em>Defect Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Defect Id</em>'.
	 * @see saddlebar.model.commission.Remake#getDefectId()
	 * @see #getRemake()
	 * @generated
	 */
	EAttribute getRemake_DefectId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Remake#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see saddlebar.model.commission.Remake#getReason()
	 * @see #getRemake()
	 * @generated
	 */
	EAttribute getRemake_Reason();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Note <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Note</em>'.
	 * @see saddlebar.model.commission.Note
	 * @generated
	 */
	EClass getNote();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Note#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see saddlebar.model.commission.Note#getText()
	 * @see #getNote()
	 * @generated
	 */
	EAttribute getNote_Text();

	/**
	 * Returns the meta object for the attribute list '{@link saddlebar.model.commission.Note#getAboutIds <em>About Ids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>About Ids</em>'.
	 * @see saddlebar.model.commission.Note#getAboutIds()
	 * @see #getNote()
	 * @generated
	 */
	EAttribute getNote_AboutIds();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.CostLine <em>Cost Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cost Line</em>'.
	 * @see saddlebar.model.commission.CostLine
	 * @generated
	 */
	EClass getCostLine();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.CostLine#getSourceKey <em>Source Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source Key</em>'.
	 * @see saddlebar.model.commission.CostLine#getSourceKey()
	 * @see #getCostLine()
	 * @generated
	 */
	EAttribute getCostLine_SourceKey();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.CostLine#getWhat <em>What</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>What</em>'.
	 * @see saddlebar.model.commission.CostLine#getWhat()
	 * @see #getCostLine()
	 * @generated
	 */
	EAttribute getCostLine_What();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.CostLine#getWindowId <em>Window Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Window Id</em>'.
	 * @see saddlebar.model.commission.CostLine#getWindowId()
	 * @see #getCostLine()
	 * @generated
	 */
	EAttribute getCostLine_WindowId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.CostLine#isEstimate <em>Estimate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Estimate</em>'.
	 * @see saddlebar.model.commission.CostLine#isEstimate()
	 * @see #getCostLine()
	 * @generated
	 */
	EAttribute getCostLine_Estimate();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.CostLine#getQuantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quantity</em>'.
	 * @see saddlebar.model.commission.CostLine#getQuantity()
	 * @see #getCostLine()
	 * @generated
	 */
	EAttribute getCostLine_Quantity();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.CostLine#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see saddlebar.model.commission.CostLine#getUnit()
	 * @see #getCostLine()
	 * @generated
	 */
	EAttribute getCostLine_Unit();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.CostLine#getUnitPrice <em>Unit Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit Price</em>'.
	 * @see saddlebar.model.commission.CostLine#getUnitPrice()
	 * @see #getCostLine()
	 * @generated
	 */
	EAttribute getCostLine_UnitPrice();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.CostLine#getAmount <em>Amount</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Amount</em>'.
	 * @see saddlebar.model.commission.CostLine#getAmount()
	 * @see #getCostLine()
	 * @generated
	 */
	EAttribute getCostLine_Amount();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.CostLine#getCurrency <em>Currency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Currency</em>'.
	 * @see saddlebar.model.commission.CostLine#getCurrency()
	 * @see #getCostLine()
	 * @generated
	 */
	EAttribute getCostLine_Currency();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.StockMove <em>Stock Move</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stock Move</em>'.
	 * @see saddlebar.model.commission.StockMove
	 * @generated
	 */
	EClass getStockMove();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StockMove#getItemId <em>Item Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Item Id</em>'.
	 * @see saddlebar.model.commission.StockMove#getItemId()
	 * @see #getStockMove()
	 * @generated
	 */
	EAttribute getStockMove_ItemId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StockMove#getQuantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quantity</em>'.
	 * @see saddlebar.model.commission.StockMove#getQuantity()
	 * @see #getStockMove()
	 * @generated
	 */
	EAttribute getStockMove_Quantity();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StockMove#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see saddlebar.model.commission.StockMove#getUnit()
	 * @see #getStockMove()
	 * @generated
	 */
	EAttribute getStockMove_Unit();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StockMove#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see saddlebar.model.commission.StockMove#getReason()
	 * @see #getStockMove()
	 * @generated
	 */
	EAttribute getStockMove_Reason();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.Approved <em>Approved</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Approved</em>'.
	 * @see saddlebar.model.commission.Approved
	 * @generated
	 */
	EClass getApproved();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Approved#getApprovalId <em>Approval Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Approval Id</em>'.
	 * @see saddlebar.model.commission.Approved#getApprovalId()
	 * @see #getApproved()
	 * @generated
	 */
	EAttribute getApproved_ApprovalId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Approved#getQuoteId <em>Quote Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quote Id</em>'.
	 * @see saddlebar.model.commission.Approved#getQuoteId()
	 * @see #getApproved()
	 * @generated
	 */
	EAttribute getApproved_QuoteId();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.Approved#getColourwayId <em>Colourway Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Colourway Id</em>'.
	 * @see saddlebar.model.commission.Approved#getColourwayId()
	 * @see #getApproved()
	 * @generated
	 */
	EAttribute getApproved_ColourwayId();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.OtherRecord <em>Other Record</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Other Record</em>'.
	 * @see saddlebar.model.commission.OtherRecord
	 * @generated
	 */
	EClass getOtherRecord();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.StockSheet <em>Stock Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stock Sheet</em>'.
	 * @see saddlebar.model.commission.StockSheet
	 * @generated
	 */
	EClass getStockSheet();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.StockSheet#getGlass <em>Glass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Glass</em>'.
	 * @see saddlebar.model.commission.StockSheet#getGlass()
	 * @see #getStockSheet()
	 * @generated
	 */
	EReference getStockSheet_Glass();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StockSheet#getWidthMm <em>Width Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width Mm</em>'.
	 * @see saddlebar.model.commission.StockSheet#getWidthMm()
	 * @see #getStockSheet()
	 * @generated
	 */
	EAttribute getStockSheet_WidthMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StockSheet#getHeightMm <em>Height Mm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height Mm</em>'.
	 * @see saddlebar.model.commission.StockSheet#getHeightMm()
	 * @see #getStockSheet()
	 * @generated
	 */
	EAttribute getStockSheet_HeightMm();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StockSheet#getOutline <em>Outline</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outline</em>'.
	 * @see saddlebar.model.commission.StockSheet#getOutline()
	 * @see #getStockSheet()
	 * @generated
	 */
	EAttribute getStockSheet_Outline();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StockSheet#getGrainDeg <em>Grain Deg</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Grain Deg</em>'.
	 * @see saddlebar.model.commission.StockSheet#getGrainDeg()
	 * @see #getStockSheet()
	 * @generated
	 */
	EAttribute getStockSheet_GrainDeg();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StockSheet#isOffcut <em>Offcut</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Offcut</em>'.
	 * @see saddlebar.model.commission.StockSheet#isOffcut()
	 * @see #getStockSheet()
	 * @generated
	 */
	EAttribute getStockSheet_Offcut();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StockSheet#getCutFrom <em>Cut From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cut From</em>'.
	 * @see saddlebar.model.commission.StockSheet#getCutFrom()
	 * @see #getStockSheet()
	 * @generated
	 */
	EAttribute getStockSheet_CutFrom();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.StockSheet#isUsedUp <em>Used Up</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Used Up</em>'.
	 * @see saddlebar.model.commission.StockSheet#isUsedUp()
	 * @see #getStockSheet()
	 * @generated
	 */
	EAttribute getStockSheet_UsedUp();

	/**
	 * Returns the meta object for the containment reference list '{@link saddlebar.model.commission.StockSheet#getFlaws <em>Flaws</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Flaws</em>'.
	 * @see saddlebar.model.commission.StockSheet#getFlaws()
	 * @see #getStockSheet()
	 * @generated
	 */
	EReference getStockSheet_Flaws();

	/**
	 * Returns the meta object for class '{@link saddlebar.model.commission.GlassFlaw <em>Glass Flaw</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Glass Flaw</em>'.
	 * @see saddlebar.model.commission.GlassFlaw
	 * @generated
	 */
	EClass getGlassFlaw();

	/**
	 * Returns the meta object for the container reference '{@link saddlebar.model.commission.GlassFlaw#getSheet <em>Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the container reference '<em>Sheet</em>'.
	 * @see saddlebar.model.commission.GlassFlaw#getSheet()
	 * @see #getGlassFlaw()
	 * @generated
	 */
	EReference getGlassFlaw_Sheet();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassFlaw#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see saddlebar.model.commission.GlassFlaw#getKind()
	 * @see #getGlassFlaw()
	 * @generated
	 */
	EAttribute getGlassFlaw_Kind();

	/**
	 * Returns the meta object for the attribute '{@link saddlebar.model.commission.GlassFlaw#getOutline <em>Outline</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outline</em>'.
	 * @see saddlebar.model.commission.GlassFlaw#getOutline()
	 * @see #getGlassFlaw()
	 * @generated
	 */
	EAttribute getGlassFlaw_Outline();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.UnitSystem <em>Unit System</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Unit System</em>'.
	 * @see saddlebar.model.commission.UnitSystem
	 * @generated
	 */
	EEnum getUnitSystem();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.LayerRole <em>Layer Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Layer Role</em>'.
	 * @see saddlebar.model.commission.LayerRole
	 * @generated
	 */
	EEnum getLayerRole();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.Face <em>Face</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Face</em>'.
	 * @see saddlebar.model.commission.Face
	 * @generated
	 */
	EEnum getFace();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.MakingState <em>Making State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Making State</em>'.
	 * @see saddlebar.model.commission.MakingState
	 * @generated
	 */
	EEnum getMakingState();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.JoinKind <em>Join Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Join Kind</em>'.
	 * @see saddlebar.model.commission.JoinKind
	 * @generated
	 */
	EEnum getJoinKind();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.OpeningKind <em>Opening Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Opening Kind</em>'.
	 * @see saddlebar.model.commission.OpeningKind
	 * @generated
	 */
	EEnum getOpeningKind();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.PaintKind <em>Paint Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Paint Kind</em>'.
	 * @see saddlebar.model.commission.PaintKind
	 * @generated
	 */
	EEnum getPaintKind();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.MediumBase <em>Medium Base</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Medium Base</em>'.
	 * @see saddlebar.model.commission.MediumBase
	 * @generated
	 */
	EEnum getMediumBase();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.SheetMaterial <em>Sheet Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Sheet Material</em>'.
	 * @see saddlebar.model.commission.SheetMaterial
	 * @generated
	 */
	EEnum getSheetMaterial();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.TonerSide <em>Toner Side</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Toner Side</em>'.
	 * @see saddlebar.model.commission.TonerSide
	 * @generated
	 */
	EEnum getTonerSide();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.SightLineRule <em>Sight Line Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Sight Line Rule</em>'.
	 * @see saddlebar.model.commission.SightLineRule
	 * @generated
	 */
	EEnum getSightLineRule();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.ToneMode <em>Tone Mode</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Tone Mode</em>'.
	 * @see saddlebar.model.commission.ToneMode
	 * @generated
	 */
	EEnum getToneMode();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.MirrorRule <em>Mirror Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Mirror Rule</em>'.
	 * @see saddlebar.model.commission.MirrorRule
	 * @generated
	 */
	EEnum getMirrorRule();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.EndRule <em>End Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>End Rule</em>'.
	 * @see saddlebar.model.commission.EndRule
	 * @generated
	 */
	EEnum getEndRule();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.MendKind <em>Mend Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Mend Kind</em>'.
	 * @see saddlebar.model.commission.MendKind
	 * @generated
	 */
	EEnum getMendKind();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.QuoteState <em>Quote State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Quote State</em>'.
	 * @see saddlebar.model.commission.QuoteState
	 * @generated
	 */
	EEnum getQuoteState();

	/**
	 * Returns the meta object for enum '{@link saddlebar.model.commission.Disposition <em>Disposition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Disposition</em>'.
	 * @see saddlebar.model.commission.Disposition
	 * @generated
	 */
	EEnum getDisposition();

	/**
	 * Returns the meta object for data type '{@link java.time.Instant <em>Moment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * An instant, ISO 8601 in UTC.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Moment</em>'.
	 * @see java.time.Instant
	 * @model instanceClass="java.time.Instant"
	 * @generated
	 */
	EDataType getMoment();

	/**
	 * Returns the meta object for data type '{@link java.time.LocalDate <em>Day</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A day, ISO 8601.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Day</em>'.
	 * @see java.time.LocalDate
	 * @model instanceClass="java.time.LocalDate"
	 * @generated
	 */
	EDataType getDay();

	/**
	 * Returns the meta object for data type '{@link saddlebar.model.art.OutlineMm <em>Outline</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A region in mm: one outer ring and its holes, written as well-known text.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Outline</em>'.
	 * @see saddlebar.model.art.OutlineMm
	 * @model instanceClass="saddlebar.model.art.OutlineMm"
	 * @generated
	 */
	EDataType getOutline();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	CommissionFactory getCommissionFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each operation of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.IdentifiedImpl <em>Identified</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.IdentifiedImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getIdentified()
		 * @generated
		 */
		EClass IDENTIFIED = eINSTANCE.getIdentified();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute IDENTIFIED__ID = eINSTANCE.getIdentified_Id();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.NamedImpl <em>Named</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.NamedImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getNamed()
		 * @generated
		 */
		EClass NAMED = eINSTANCE.getNamed();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NAMED__NAME = eINSTANCE.getNamed_Name();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NAMED__NOTE = eINSTANCE.getNamed_Note();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.MadeFileImpl <em>Made File</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.MadeFileImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMadeFile()
		 * @generated
		 */
		EClass MADE_FILE = eINSTANCE.getMadeFile();

		/**
		 * The meta object literal for the '<em><b>What</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MADE_FILE__WHAT = eINSTANCE.getMadeFile_What();

		/**
		 * The meta object literal for the '<em><b>File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MADE_FILE__FILE = eINSTANCE.getMadeFile_File();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MADE_FILE__SHA256 = eINSTANCE.getMadeFile_Sha256();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.StudioImpl <em>Studio</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.StudioImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStudio()
		 * @generated
		 */
		EClass STUDIO = eINSTANCE.getStudio();

		/**
		 * The meta object literal for the '<em><b>Format Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDIO__FORMAT_VERSION = eINSTANCE.getStudio_FormatVersion();

		/**
		 * The meta object literal for the '<em><b>Units</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDIO__UNITS = eINSTANCE.getStudio_Units();

		/**
		 * The meta object literal for the '<em><b>Currency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDIO__CURRENCY = eINSTANCE.getStudio_Currency();

		/**
		 * The meta object literal for the '<em><b>Papers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__PAPERS = eINSTANCE.getStudio_Papers();

		/**
		 * The meta object literal for the '<em><b>Meshes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__MESHES = eINSTANCE.getStudio_Meshes();

		/**
		 * The meta object literal for the '<em><b>Frames</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__FRAMES = eINSTANCE.getStudio_Frames();

		/**
		 * The meta object literal for the '<em><b>Paints</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__PAINTS = eINSTANCE.getStudio_Paints();

		/**
		 * The meta object literal for the '<em><b>Media</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__MEDIA = eINSTANCE.getStudio_Media();

		/**
		 * The meta object literal for the '<em><b>Glass</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__GLASS = eINSTANCE.getStudio_Glass();

		/**
		 * The meta object literal for the '<em><b>Joins</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__JOINS = eINSTANCE.getStudio_Joins();

		/**
		 * The meta object literal for the '<em><b>Solders</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__SOLDERS = eINSTANCE.getStudio_Solders();

		/**
		 * The meta object literal for the '<em><b>Bars</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__BARS = eINSTANCE.getStudio_Bars();

		/**
		 * The meta object literal for the '<em><b>Kilns</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__KILNS = eINSTANCE.getStudio_Kilns();

		/**
		 * The meta object literal for the '<em><b>Schedules</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__SCHEDULES = eINSTANCE.getStudio_Schedules();

		/**
		 * The meta object literal for the '<em><b>Price Book</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__PRICE_BOOK = eINSTANCE.getStudio_PriceBook();

		/**
		 * The meta object literal for the '<em><b>Printers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__PRINTERS = eINSTANCE.getStudio_Printers();

		/**
		 * The meta object literal for the '<em><b>Sheet Stock</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__SHEET_STOCK = eINSTANCE.getStudio_SheetStock();

		/**
		 * The meta object literal for the '<em><b>Calibrations</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__CALIBRATIONS = eINSTANCE.getStudio_Calibrations();

		/**
		 * The meta object literal for the '<em><b>Processes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__PROCESSES = eINSTANCE.getStudio_Processes();

		/**
		 * The meta object literal for the '<em><b>People</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__PEOPLE = eINSTANCE.getStudio_People();

		/**
		 * The meta object literal for the '<em><b>Suppliers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__SUPPLIERS = eINSTANCE.getStudio_Suppliers();

		/**
		 * The meta object literal for the '<em><b>Commissions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDIO__COMMISSIONS = eINSTANCE.getStudio_Commissions();

		/**
		 * The meta object literal for the '<em><b>Address</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDIO__ADDRESS = eINSTANCE.getStudio_Address();

		/**
		 * The meta object literal for the '<em><b>Contact</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDIO__CONTACT = eINSTANCE.getStudio_Contact();

		/**
		 * The meta object literal for the '<em><b>Mark File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDIO__MARK_FILE = eINSTANCE.getStudio_MarkFile();

		/**
		 * The meta object literal for the '<em><b>Accent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDIO__ACCENT = eINSTANCE.getStudio_Accent();

		/**
		 * The meta object literal for the '<em><b>Terms</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDIO__TERMS = eINSTANCE.getStudio_Terms();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.JoinedCommissionImpl <em>Joined Commission</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.JoinedCommissionImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getJoinedCommission()
		 * @generated
		 */
		EClass JOINED_COMMISSION = eINSTANCE.getJoinedCommission();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOINED_COMMISSION__STUDIO = eINSTANCE.getJoinedCommission_Studio();

		/**
		 * The meta object literal for the '<em><b>Folder</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOINED_COMMISSION__FOLDER = eINSTANCE.getJoinedCommission_Folder();

		/**
		 * The meta object literal for the '<em><b>Commission Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOINED_COMMISSION__COMMISSION_ID = eINSTANCE.getJoinedCommission_CommissionId();

		/**
		 * The meta object literal for the '<em><b>Joined</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOINED_COMMISSION__JOINED = eINSTANCE.getJoinedCommission_Joined();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PaperSizeImpl <em>Paper Size</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PaperSizeImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPaperSize()
		 * @generated
		 */
		EClass PAPER_SIZE = eINSTANCE.getPaperSize();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PAPER_SIZE__STUDIO = eINSTANCE.getPaperSize_Studio();

		/**
		 * The meta object literal for the '<em><b>Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAPER_SIZE__WIDTH_MM = eINSTANCE.getPaperSize_WidthMm();

		/**
		 * The meta object literal for the '<em><b>Height Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAPER_SIZE__HEIGHT_MM = eINSTANCE.getPaperSize_HeightMm();

		/**
		 * The meta object literal for the '<em><b>In Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAPER_SIZE__IN_USE = eINSTANCE.getPaperSize_InUse();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAPER_SIZE__SOURCE = eINSTANCE.getPaperSize_Source();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.MeshImpl <em>Mesh</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.MeshImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMesh()
		 * @generated
		 */
		EClass MESH = eINSTANCE.getMesh();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MESH__STUDIO = eINSTANCE.getMesh_Studio();

		/**
		 * The meta object literal for the '<em><b>Threads Per Inch</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MESH__THREADS_PER_INCH = eINSTANCE.getMesh_ThreadsPerInch();

		/**
		 * The meta object literal for the '<em><b>Thread Um</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MESH__THREAD_UM = eINSTANCE.getMesh_ThreadUm();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MESH__SOURCE = eINSTANCE.getMesh_Source();

		/**
		 * The meta object literal for the '<em><b>Frames</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MESH__FRAMES = eINSTANCE.getMesh_Frames();

		/**
		 * The meta object literal for the '<em><b>Calibrations</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MESH__CALIBRATIONS = eINSTANCE.getMesh_Calibrations();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.ScreenFrameImpl <em>Screen Frame</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.ScreenFrameImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getScreenFrame()
		 * @generated
		 */
		EClass SCREEN_FRAME = eINSTANCE.getScreenFrame();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SCREEN_FRAME__STUDIO = eINSTANCE.getScreenFrame_Studio();

		/**
		 * The meta object literal for the '<em><b>Mesh</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SCREEN_FRAME__MESH = eINSTANCE.getScreenFrame_Mesh();

		/**
		 * The meta object literal for the '<em><b>Image Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN_FRAME__IMAGE_WIDTH_MM = eINSTANCE.getScreenFrame_ImageWidthMm();

		/**
		 * The meta object literal for the '<em><b>Image Height Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN_FRAME__IMAGE_HEIGHT_MM = eINSTANCE.getScreenFrame_ImageHeightMm();

		/**
		 * The meta object literal for the '<em><b>Squeegee Margin Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN_FRAME__SQUEEGEE_MARGIN_MM = eINSTANCE.getScreenFrame_SqueegeeMarginMm();

		/**
		 * The meta object literal for the '<em><b>Mesh Turn Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN_FRAME__MESH_TURN_DEG = eINSTANCE.getScreenFrame_MeshTurnDeg();

		/**
		 * The meta object literal for the '<em><b>Out Of Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN_FRAME__OUT_OF_USE = eINSTANCE.getScreenFrame_OutOfUse();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PaintImpl <em>Paint</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PaintImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPaint()
		 * @generated
		 */
		EClass PAINT = eINSTANCE.getPaint();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PAINT__STUDIO = eINSTANCE.getPaint_Studio();

		/**
		 * The meta object literal for the '<em><b>Family</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__FAMILY = eINSTANCE.getPaint_Family();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__KIND = eINSTANCE.getPaint_Kind();

		/**
		 * The meta object literal for the '<em><b>Colour</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__COLOUR = eINSTANCE.getPaint_Colour();

		/**
		 * The meta object literal for the '<em><b>Solid Transmittance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__SOLID_TRANSMITTANCE = eINSTANCE.getPaint_SolidTransmittance();

		/**
		 * The meta object literal for the '<em><b>Density GPer Cm3</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__DENSITY_GPER_CM3 = eINSTANCE.getPaint_DensityGPerCm3();

		/**
		 * The meta object literal for the '<em><b>Maturing From C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__MATURING_FROM_C = eINSTANCE.getPaint_MaturingFromC();

		/**
		 * The meta object literal for the '<em><b>Maturing To C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__MATURING_TO_C = eINSTANCE.getPaint_MaturingToC();

		/**
		 * The meta object literal for the '<em><b>Powder To Medium</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__POWDER_TO_MEDIUM = eINSTANCE.getPaint_PowderToMedium();

		/**
		 * The meta object literal for the '<em><b>Contains Lead</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__CONTAINS_LEAD = eINSTANCE.getPaint_ContainsLead();

		/**
		 * The meta object literal for the '<em><b>Contains Cadmium</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__CONTAINS_CADMIUM = eINSTANCE.getPaint_ContainsCadmium();

		/**
		 * The meta object literal for the '<em><b>Gold Bearing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__GOLD_BEARING = eINSTANCE.getPaint_GoldBearing();

		/**
		 * The meta object literal for the '<em><b>Price Per Kg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__PRICE_PER_KG = eINSTANCE.getPaint_PricePerKg();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__SOURCE = eINSTANCE.getPaint_Source();

		/**
		 * The meta object literal for the '<em><b>Medium</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PAINT__MEDIUM = eINSTANCE.getPaint_Medium();

		/**
		 * The meta object literal for the '<em><b>Supplier</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PAINT__SUPPLIER = eINSTANCE.getPaint_Supplier();

		/**
		 * The meta object literal for the '<em><b>Lots</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PAINT__LOTS = eINSTANCE.getPaint_Lots();

		/**
		 * The meta object literal for the '<em><b>Transmittance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT__TRANSMITTANCE = eINSTANCE.getPaint_Transmittance();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PaintLotImpl <em>Paint Lot</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PaintLotImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPaintLot()
		 * @generated
		 */
		EClass PAINT_LOT = eINSTANCE.getPaintLot();

		/**
		 * The meta object literal for the '<em><b>Paint</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PAINT_LOT__PAINT = eINSTANCE.getPaintLot_Paint();

		/**
		 * The meta object literal for the '<em><b>Received</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT_LOT__RECEIVED = eINSTANCE.getPaintLot_Received();

		/**
		 * The meta object literal for the '<em><b>Mass G</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT_LOT__MASS_G = eINSTANCE.getPaintLot_MassG();

		/**
		 * The meta object literal for the '<em><b>Price Per Kg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT_LOT__PRICE_PER_KG = eINSTANCE.getPaintLot_PricePerKg();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.MediumImpl <em>Medium</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.MediumImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMedium()
		 * @generated
		 */
		EClass MEDIUM = eINSTANCE.getMedium();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MEDIUM__STUDIO = eINSTANCE.getMedium_Studio();

		/**
		 * The meta object literal for the '<em><b>Base</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEDIUM__BASE = eINSTANCE.getMedium_Base();

		/**
		 * The meta object literal for the '<em><b>Density GPer Cm3</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEDIUM__DENSITY_GPER_CM3 = eINSTANCE.getMedium_DensityGPerCm3();

		/**
		 * The meta object literal for the '<em><b>Price Per Kg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEDIUM__PRICE_PER_KG = eINSTANCE.getMedium_PricePerKg();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEDIUM__SOURCE = eINSTANCE.getMedium_Source();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.GlassStockImpl <em>Glass Stock</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.GlassStockImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getGlassStock()
		 * @generated
		 */
		EClass GLASS_STOCK = eINSTANCE.getGlassStock();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GLASS_STOCK__STUDIO = eINSTANCE.getGlassStock_Studio();

		/**
		 * The meta object literal for the '<em><b>Family</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__FAMILY = eINSTANCE.getGlassStock_Family();

		/**
		 * The meta object literal for the '<em><b>Colour</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__COLOUR = eINSTANCE.getGlassStock_Colour();

		/**
		 * The meta object literal for the '<em><b>Thickness Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__THICKNESS_MM = eINSTANCE.getGlassStock_ThicknessMm();

		/**
		 * The meta object literal for the '<em><b>Textured</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__TEXTURED = eINSTANCE.getGlassStock_Textured();

		/**
		 * The meta object literal for the '<em><b>Grained</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__GRAINED = eINSTANCE.getGlassStock_Grained();

		/**
		 * The meta object literal for the '<em><b>Opal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__OPAL = eINSTANCE.getGlassStock_Opal();

		/**
		 * The meta object literal for the '<em><b>Density Kg Per M3</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__DENSITY_KG_PER_M3 = eINSTANCE.getGlassStock_DensityKgPerM3();

		/**
		 * The meta object literal for the '<em><b>Heat Model</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__HEAT_MODEL = eINSTANCE.getGlassStock_HeatModel();

		/**
		 * The meta object literal for the '<em><b>Sheet Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__SHEET_WIDTH_MM = eINSTANCE.getGlassStock_SheetWidthMm();

		/**
		 * The meta object literal for the '<em><b>Sheet Height Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__SHEET_HEIGHT_MM = eINSTANCE.getGlassStock_SheetHeightMm();

		/**
		 * The meta object literal for the '<em><b>Stock M2</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__STOCK_M2 = eINSTANCE.getGlassStock_StockM2();

		/**
		 * The meta object literal for the '<em><b>Price Per M2</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__PRICE_PER_M2 = eINSTANCE.getGlassStock_PricePerM2();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__SOURCE = eINSTANCE.getGlassStock_Source();

		/**
		 * The meta object literal for the '<em><b>Supplier</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GLASS_STOCK__SUPPLIER = eINSTANCE.getGlassStock_Supplier();

		/**
		 * The meta object literal for the '<em><b>Viscosity A</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__VISCOSITY_A = eINSTANCE.getGlassStock_ViscosityA();

		/**
		 * The meta object literal for the '<em><b>Viscosity BK</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__VISCOSITY_BK = eINSTANCE.getGlassStock_ViscosityBK();

		/**
		 * The meta object literal for the '<em><b>Viscosity T0C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__VISCOSITY_T0C = eINSTANCE.getGlassStock_ViscosityT0C();

		/**
		 * The meta object literal for the '<em><b>Expansion Per Million K</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__EXPANSION_PER_MILLION_K = eINSTANCE.getGlassStock_ExpansionPerMillionK();

		/**
		 * The meta object literal for the '<em><b>Measured Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__MEASURED_MM = eINSTANCE.getGlassStock_MeasuredMm();

		/**
		 * The meta object literal for the '<em><b>Transmittance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__TRANSMITTANCE = eINSTANCE.getGlassStock_Transmittance();

		/**
		 * The meta object literal for the '<em><b>Sheets</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GLASS_STOCK__SHEETS = eINSTANCE.getGlassStock_Sheets();

		/**
		 * The meta object literal for the '<em><b>Narrow Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__NARROW_MM = eINSTANCE.getGlassStock_NarrowMm();

		/**
		 * The meta object literal for the '<em><b>Needle Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__NEEDLE_DEG = eINSTANCE.getGlassStock_NeedleDeg();

		/**
		 * The meta object literal for the '<em><b>Inside Curve</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__INSIDE_CURVE = eINSTANCE.getGlassStock_InsideCurve();

		/**
		 * The meta object literal for the '<em><b>Inside Radius Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_STOCK__INSIDE_RADIUS_MM = eINSTANCE.getGlassStock_InsideRadiusMm();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.JoinStockImpl <em>Join Stock</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.JoinStockImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getJoinStock()
		 * @generated
		 */
		EClass JOIN_STOCK = eINSTANCE.getJoinStock();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOIN_STOCK__STUDIO = eINSTANCE.getJoinStock_Studio();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOIN_STOCK__KIND = eINSTANCE.getJoinStock_Kind();

		/**
		 * The meta object literal for the '<em><b>Thickness Um</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOIN_STOCK__THICKNESS_UM = eINSTANCE.getJoinStock_ThicknessUm();

		/**
		 * The meta object literal for the '<em><b>Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOIN_STOCK__WIDTH_MM = eINSTANCE.getJoinStock_WidthMm();

		/**
		 * The meta object literal for the '<em><b>Heart Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOIN_STOCK__HEART_MM = eINSTANCE.getJoinStock_HeartMm();

		/**
		 * The meta object literal for the '<em><b>Face Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOIN_STOCK__FACE_MM = eINSTANCE.getJoinStock_FaceMm();

		/**
		 * The meta object literal for the '<em><b>Mass GPer M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOIN_STOCK__MASS_GPER_M = eINSTANCE.getJoinStock_MassGPerM();

		/**
		 * The meta object literal for the '<em><b>Price Per M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOIN_STOCK__PRICE_PER_M = eINSTANCE.getJoinStock_PricePerM();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOIN_STOCK__SOURCE = eINSTANCE.getJoinStock_Source();

		/**
		 * The meta object literal for the '<em><b>Sold Length Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOIN_STOCK__SOLD_LENGTH_MM = eINSTANCE.getJoinStock_SoldLengthMm();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.SolderStockImpl <em>Solder Stock</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.SolderStockImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSolderStock()
		 * @generated
		 */
		EClass SOLDER_STOCK = eINSTANCE.getSolderStock();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SOLDER_STOCK__STUDIO = eINSTANCE.getSolderStock_Studio();

		/**
		 * The meta object literal for the '<em><b>Tin Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOLDER_STOCK__TIN_SHARE = eINSTANCE.getSolderStock_TinShare();

		/**
		 * The meta object literal for the '<em><b>Contains Lead</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOLDER_STOCK__CONTAINS_LEAD = eINSTANCE.getSolderStock_ContainsLead();

		/**
		 * The meta object literal for the '<em><b>Density GPer Cm3</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOLDER_STOCK__DENSITY_GPER_CM3 = eINSTANCE.getSolderStock_DensityGPerCm3();

		/**
		 * The meta object literal for the '<em><b>Price Per Kg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOLDER_STOCK__PRICE_PER_KG = eINSTANCE.getSolderStock_PricePerKg();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOLDER_STOCK__SOURCE = eINSTANCE.getSolderStock_Source();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.BarStockImpl <em>Bar Stock</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.BarStockImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getBarStock()
		 * @generated
		 */
		EClass BAR_STOCK = eINSTANCE.getBarStock();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BAR_STOCK__STUDIO = eINSTANCE.getBarStock_Studio();

		/**
		 * The meta object literal for the '<em><b>Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BAR_STOCK__WIDTH_MM = eINSTANCE.getBarStock_WidthMm();

		/**
		 * The meta object literal for the '<em><b>Depth Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BAR_STOCK__DEPTH_MM = eINSTANCE.getBarStock_DepthMm();

		/**
		 * The meta object literal for the '<em><b>Round</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BAR_STOCK__ROUND = eINSTANCE.getBarStock_Round();

		/**
		 * The meta object literal for the '<em><b>Price Per M</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BAR_STOCK__PRICE_PER_M = eINSTANCE.getBarStock_PricePerM();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BAR_STOCK__SOURCE = eINSTANCE.getBarStock_Source();

		/**
		 * The meta object literal for the '<em><b>Sold Length Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BAR_STOCK__SOLD_LENGTH_MM = eINSTANCE.getBarStock_SoldLengthMm();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.KilnImpl <em>Kiln</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.KilnImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getKiln()
		 * @generated
		 */
		EClass KILN = eINSTANCE.getKiln();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference KILN__STUDIO = eINSTANCE.getKiln_Studio();

		/**
		 * The meta object literal for the '<em><b>Shelf Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__SHELF_WIDTH_MM = eINSTANCE.getKiln_ShelfWidthMm();

		/**
		 * The meta object literal for the '<em><b>Shelf Depth Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__SHELF_DEPTH_MM = eINSTANCE.getKiln_ShelfDepthMm();

		/**
		 * The meta object literal for the '<em><b>Shelves</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__SHELVES = eINSTANCE.getKiln_Shelves();

		/**
		 * The meta object literal for the '<em><b>Max C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__MAX_C = eINSTANCE.getKiln_MaxC();

		/**
		 * The meta object literal for the '<em><b>Max Rate KPer H</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__MAX_RATE_KPER_H = eINSTANCE.getKiln_MaxRateKPerH();

		/**
		 * The meta object literal for the '<em><b>Natural Fall KPer H</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__NATURAL_FALL_KPER_H = eINSTANCE.getKiln_NaturalFallKPerH();

		/**
		 * The meta object literal for the '<em><b>Power Kw</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__POWER_KW = eINSTANCE.getKiln_PowerKw();

		/**
		 * The meta object literal for the '<em><b>Offset K</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__OFFSET_K = eINSTANCE.getKiln_OffsetK();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__SOURCE = eINSTANCE.getKiln_Source();

		/**
		 * The meta object literal for the '<em><b>Chamber JPer K</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__CHAMBER_JPER_K = eINSTANCE.getKiln_ChamberJPerK();

		/**
		 * The meta object literal for the '<em><b>Lining JPer K</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__LINING_JPER_K = eINSTANCE.getKiln_LiningJPerK();

		/**
		 * The meta object literal for the '<em><b>To Lining WPer K</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__TO_LINING_WPER_K = eINSTANCE.getKiln_ToLiningWPerK();

		/**
		 * The meta object literal for the '<em><b>To Room WPer K</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__TO_ROOM_WPER_K = eINSTANCE.getKiln_ToRoomWPerK();

		/**
		 * The meta object literal for the '<em><b>Learnt Firings</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute KILN__LEARNT_FIRINGS = eINSTANCE.getKiln_LearntFirings();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.FiringScheduleImpl <em>Firing Schedule</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.FiringScheduleImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getFiringSchedule()
		 * @generated
		 */
		EClass FIRING_SCHEDULE = eINSTANCE.getFiringSchedule();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIRING_SCHEDULE__STUDIO = eINSTANCE.getFiringSchedule_Studio();

		/**
		 * The meta object literal for the '<em><b>Purpose</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING_SCHEDULE__PURPOSE = eINSTANCE.getFiringSchedule_Purpose();

		/**
		 * The meta object literal for the '<em><b>Segments</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIRING_SCHEDULE__SEGMENTS = eINSTANCE.getFiringSchedule_Segments();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING_SCHEDULE__SOURCE = eINSTANCE.getFiringSchedule_Source();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.FiringSegmentImpl <em>Firing Segment</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.FiringSegmentImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getFiringSegment()
		 * @generated
		 */
		EClass FIRING_SEGMENT = eINSTANCE.getFiringSegment();

		/**
		 * The meta object literal for the '<em><b>Schedule</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIRING_SEGMENT__SCHEDULE = eINSTANCE.getFiringSegment_Schedule();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING_SEGMENT__NAME = eINSTANCE.getFiringSegment_Name();

		/**
		 * The meta object literal for the '<em><b>Rate KPer H</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING_SEGMENT__RATE_KPER_H = eINSTANCE.getFiringSegment_RateKPerH();

		/**
		 * The meta object literal for the '<em><b>Target C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING_SEGMENT__TARGET_C = eINSTANCE.getFiringSegment_TargetC();

		/**
		 * The meta object literal for the '<em><b>Soak Min</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING_SEGMENT__SOAK_MIN = eINSTANCE.getFiringSegment_SoakMin();

		/**
		 * The meta object literal for the '<em><b>Vent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING_SEGMENT__VENT = eINSTANCE.getFiringSegment_Vent();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING_SEGMENT__NOTE = eINSTANCE.getFiringSegment_Note();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PriceBookImpl <em>Price Book</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PriceBookImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPriceBook()
		 * @generated
		 */
		EClass PRICE_BOOK = eINSTANCE.getPriceBook();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PRICE_BOOK__STUDIO = eINSTANCE.getPriceBook_Studio();

		/**
		 * The meta object literal for the '<em><b>Labour Per Hour</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE_BOOK__LABOUR_PER_HOUR = eINSTANCE.getPriceBook_LabourPerHour();

		/**
		 * The meta object literal for the '<em><b>Energy Per Kwh</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE_BOOK__ENERGY_PER_KWH = eINSTANCE.getPriceBook_EnergyPerKwh();

		/**
		 * The meta object literal for the '<em><b>Overhead Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE_BOOK__OVERHEAD_SHARE = eINSTANCE.getPriceBook_OverheadShare();

		/**
		 * The meta object literal for the '<em><b>Margin Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE_BOOK__MARGIN_SHARE = eINSTANCE.getPriceBook_MarginShare();

		/**
		 * The meta object literal for the '<em><b>Tax Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE_BOOK__TAX_SHARE = eINSTANCE.getPriceBook_TaxShare();

		/**
		 * The meta object literal for the '<em><b>Items</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PRICE_BOOK__ITEMS = eINSTANCE.getPriceBook_Items();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PriceItemImpl <em>Price Item</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PriceItemImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPriceItem()
		 * @generated
		 */
		EClass PRICE_ITEM = eINSTANCE.getPriceItem();

		/**
		 * The meta object literal for the '<em><b>Book</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PRICE_ITEM__BOOK = eINSTANCE.getPriceItem_Book();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE_ITEM__KEY = eINSTANCE.getPriceItem_Key();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE_ITEM__UNIT = eINSTANCE.getPriceItem_Unit();

		/**
		 * The meta object literal for the '<em><b>Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE_ITEM__PRICE = eINSTANCE.getPriceItem_Price();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE_ITEM__FROM = eINSTANCE.getPriceItem_From();

		/**
		 * The meta object literal for the '<em><b>Currency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRICE_ITEM__CURRENCY = eINSTANCE.getPriceItem_Currency();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PrinterImpl <em>Printer</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PrinterImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPrinter()
		 * @generated
		 */
		EClass PRINTER = eINSTANCE.getPrinter();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PRINTER__STUDIO = eINSTANCE.getPrinter_Studio();

		/**
		 * The meta object literal for the '<em><b>Dpi</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTER__DPI = eINSTANCE.getPrinter_Dpi();

		/**
		 * The meta object literal for the '<em><b>Margin Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTER__MARGIN_MM = eINSTANCE.getPrinter_MarginMm();

		/**
		 * The meta object literal for the '<em><b>Scale X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTER__SCALE_X = eINSTANCE.getPrinter_ScaleX();

		/**
		 * The meta object literal for the '<em><b>Scale Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTER__SCALE_Y = eINSTANCE.getPrinter_ScaleY();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTER__SOURCE = eINSTANCE.getPrinter_Source();

		/**
		 * The meta object literal for the '<em><b>Skew</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTER__SKEW = eINSTANCE.getPrinter_Skew();

		/**
		 * The meta object literal for the '<em><b>Measured</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTER__MEASURED = eINSTANCE.getPrinter_Measured();

		/**
		 * The meta object literal for the '<em><b>Band Periods Mm</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTER__BAND_PERIODS_MM = eINSTANCE.getPrinter_BandPeriodsMm();

		/**
		 * The meta object literal for the '<em><b>Solid Transmittance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINTER__SOLID_TRANSMITTANCE = eINSTANCE.getPrinter_SolidTransmittance();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.SheetStockImpl <em>Sheet Stock</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.SheetStockImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSheetStock()
		 * @generated
		 */
		EClass SHEET_STOCK = eINSTANCE.getSheetStock();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET_STOCK__STUDIO = eINSTANCE.getSheetStock_Studio();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET_STOCK__MATERIAL = eINSTANCE.getSheetStock_Material();

		/**
		 * The meta object literal for the '<em><b>Paper</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET_STOCK__PAPER = eINSTANCE.getSheetStock_Paper();

		/**
		 * The meta object literal for the '<em><b>In Stock</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET_STOCK__IN_STOCK = eINSTANCE.getSheetStock_InStock();

		/**
		 * The meta object literal for the '<em><b>Price Per Sheet</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET_STOCK__PRICE_PER_SHEET = eINSTANCE.getSheetStock_PricePerSheet();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.ToneCalibrationImpl <em>Tone Calibration</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.ToneCalibrationImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getToneCalibration()
		 * @generated
		 */
		EClass TONE_CALIBRATION = eINSTANCE.getToneCalibration();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TONE_CALIBRATION__STUDIO = eINSTANCE.getToneCalibration_Studio();

		/**
		 * The meta object literal for the '<em><b>Mesh</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TONE_CALIBRATION__MESH = eINSTANCE.getToneCalibration_Mesh();

		/**
		 * The meta object literal for the '<em><b>Paint</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TONE_CALIBRATION__PAINT = eINSTANCE.getToneCalibration_Paint();

		/**
		 * The meta object literal for the '<em><b>Printer</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TONE_CALIBRATION__PRINTER = eINSTANCE.getToneCalibration_Printer();

		/**
		 * The meta object literal for the '<em><b>Method</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TONE_CALIBRATION__METHOD = eINSTANCE.getToneCalibration_Method();

		/**
		 * The meta object literal for the '<em><b>Process Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TONE_CALIBRATION__PROCESS_KEY = eINSTANCE.getToneCalibration_ProcessKey();

		/**
		 * The meta object literal for the '<em><b>Lpi</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TONE_CALIBRATION__LPI = eINSTANCE.getToneCalibration_Lpi();

		/**
		 * The meta object literal for the '<em><b>Dot Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TONE_CALIBRATION__DOT_MM = eINSTANCE.getToneCalibration_DotMm();

		/**
		 * The meta object literal for the '<em><b>Measured</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TONE_CALIBRATION__MEASURED = eINSTANCE.getToneCalibration_Measured();

		/**
		 * The meta object literal for the '<em><b>Readings File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TONE_CALIBRATION__READINGS_FILE = eINSTANCE.getToneCalibration_ReadingsFile();

		/**
		 * The meta object literal for the '<em><b>Points</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TONE_CALIBRATION__POINTS = eINSTANCE.getToneCalibration_Points();

		/**
		 * The meta object literal for the '<em><b>Superseded By</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TONE_CALIBRATION__SUPERSEDED_BY = eINSTANCE.getToneCalibration_SupersededBy();

		/**
		 * The meta object literal for the '<em><b>Yule Nielsen</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TONE_CALIBRATION__YULE_NIELSEN = eINSTANCE.getToneCalibration_YuleNielsen();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.TonePointImpl <em>Tone Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.TonePointImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getTonePoint()
		 * @generated
		 */
		EClass TONE_POINT = eINSTANCE.getTonePoint();

		/**
		 * The meta object literal for the '<em><b>Calibration</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TONE_POINT__CALIBRATION = eINSTANCE.getTonePoint_Calibration();

		/**
		 * The meta object literal for the '<em><b>Nominal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TONE_POINT__NOMINAL = eINSTANCE.getTonePoint_Nominal();

		/**
		 * The meta object literal for the '<em><b>Effective</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TONE_POINT__EFFECTIVE = eINSTANCE.getTonePoint_Effective();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.ProcessSettingImpl <em>Process Setting</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.ProcessSettingImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getProcessSetting()
		 * @generated
		 */
		EClass PROCESS_SETTING = eINSTANCE.getProcessSetting();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROCESS_SETTING__STUDIO = eINSTANCE.getProcessSetting_Studio();

		/**
		 * The meta object literal for the '<em><b>Process Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROCESS_SETTING__PROCESS_KEY = eINSTANCE.getProcessSetting_ProcessKey();

		/**
		 * The meta object literal for the '<em><b>Toner Side</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROCESS_SETTING__TONER_SIDE = eINSTANCE.getProcessSetting_TonerSide();

		/**
		 * The meta object literal for the '<em><b>Confirmed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROCESS_SETTING__CONFIRMED = eINSTANCE.getProcessSetting_Confirmed();

		/**
		 * The meta object literal for the '<em><b>Press C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROCESS_SETTING__PRESS_C = eINSTANCE.getProcessSetting_PressC();

		/**
		 * The meta object literal for the '<em><b>Press Min</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROCESS_SETTING__PRESS_MIN = eINSTANCE.getProcessSetting_PressMin();

		/**
		 * The meta object literal for the '<em><b>Cool Min</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROCESS_SETTING__COOL_MIN = eINSTANCE.getProcessSetting_CoolMin();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROCESS_SETTING__SOURCE = eINSTANCE.getProcessSetting_Source();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PersonImpl <em>Person</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PersonImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPerson()
		 * @generated
		 */
		EClass PERSON = eINSTANCE.getPerson();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PERSON__STUDIO = eINSTANCE.getPerson_Studio();

		/**
		 * The meta object literal for the '<em><b>Initials</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PERSON__INITIALS = eINSTANCE.getPerson_Initials();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PERSON__ROLE = eINSTANCE.getPerson_Role();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.SupplierImpl <em>Supplier</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.SupplierImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSupplier()
		 * @generated
		 */
		EClass SUPPLIER = eINSTANCE.getSupplier();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SUPPLIER__STUDIO = eINSTANCE.getSupplier_Studio();

		/**
		 * The meta object literal for the '<em><b>Contact</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SUPPLIER__CONTACT = eINSTANCE.getSupplier_Contact();

		/**
		 * The meta object literal for the '<em><b>Paints</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SUPPLIER__PAINTS = eINSTANCE.getSupplier_Paints();

		/**
		 * The meta object literal for the '<em><b>Glass</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SUPPLIER__GLASS = eINSTANCE.getSupplier_Glass();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.CommissionImpl <em>Commission</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.CommissionImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getCommission()
		 * @generated
		 */
		EClass COMMISSION = eINSTANCE.getCommission();

		/**
		 * The meta object literal for the '<em><b>Format Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSION__FORMAT_VERSION = eINSTANCE.getCommission_FormatVersion();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSION__TITLE = eINSTANCE.getCommission_Title();

		/**
		 * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSION__NUMBER = eINSTANCE.getCommission_Number();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSION__NOTE = eINSTANCE.getCommission_Note();

		/**
		 * The meta object literal for the '<em><b>Units</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSION__UNITS = eINSTANCE.getCommission_Units();

		/**
		 * The meta object literal for the '<em><b>Papers</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSION__PAPERS = eINSTANCE.getCommission_Papers();

		/**
		 * The meta object literal for the '<em><b>Join</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSION__JOIN = eINSTANCE.getCommission_Join();

		/**
		 * The meta object literal for the '<em><b>Gap Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSION__GAP_MM = eINSTANCE.getCommission_GapMm();

		/**
		 * The meta object literal for the '<em><b>Sheet Gap Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMMISSION__SHEET_GAP_MM = eINSTANCE.getCommission_SheetGapMm();

		/**
		 * The meta object literal for the '<em><b>Client</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSION__CLIENT = eINSTANCE.getCommission_Client();

		/**
		 * The meta object literal for the '<em><b>Site</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSION__SITE = eINSTANCE.getCommission_Site();

		/**
		 * The meta object literal for the '<em><b>Milestones</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSION__MILESTONES = eINSTANCE.getCommission_Milestones();

		/**
		 * The meta object literal for the '<em><b>Quotes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSION__QUOTES = eINSTANCE.getCommission_Quotes();

		/**
		 * The meta object literal for the '<em><b>Approvals</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSION__APPROVALS = eINSTANCE.getCommission_Approvals();

		/**
		 * The meta object literal for the '<em><b>Sheets</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSION__SHEETS = eINSTANCE.getCommission_Sheets();

		/**
		 * The meta object literal for the '<em><b>Windows</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSION__WINDOWS = eINSTANCE.getCommission_Windows();

		/**
		 * The meta object literal for the '<em><b>Studio</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COMMISSION__STUDIO = eINSTANCE.getCommission_Studio();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.ClientImpl <em>Client</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.ClientImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getClient()
		 * @generated
		 */
		EClass CLIENT = eINSTANCE.getClient();

		/**
		 * The meta object literal for the '<em><b>Commission</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CLIENT__COMMISSION = eINSTANCE.getClient_Commission();

		/**
		 * The meta object literal for the '<em><b>Contact</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLIENT__CONTACT = eINSTANCE.getClient_Contact();

		/**
		 * The meta object literal for the '<em><b>Address</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLIENT__ADDRESS = eINSTANCE.getClient_Address();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.SiteImpl <em>Site</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.SiteImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSite()
		 * @generated
		 */
		EClass SITE = eINSTANCE.getSite();

		/**
		 * The meta object literal for the '<em><b>Commission</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__COMMISSION = eINSTANCE.getSite_Commission();

		/**
		 * The meta object literal for the '<em><b>Address</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__ADDRESS = eINSTANCE.getSite_Address();

		/**
		 * The meta object literal for the '<em><b>Access</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__ACCESS = eINSTANCE.getSite_Access();

		/**
		 * The meta object literal for the '<em><b>Distance Km</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__DISTANCE_KM = eINSTANCE.getSite_DistanceKm();

		/**
		 * The meta object literal for the '<em><b>Trips</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__TRIPS = eINSTANCE.getSite_Trips();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.MilestoneImpl <em>Milestone</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.MilestoneImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMilestone()
		 * @generated
		 */
		EClass MILESTONE = eINSTANCE.getMilestone();

		/**
		 * The meta object literal for the '<em><b>Commission</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MILESTONE__COMMISSION = eINSTANCE.getMilestone_Commission();

		/**
		 * The meta object literal for the '<em><b>Due</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MILESTONE__DUE = eINSTANCE.getMilestone_Due();

		/**
		 * The meta object literal for the '<em><b>Done</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MILESTONE__DONE = eINSTANCE.getMilestone_Done();

		/**
		 * The meta object literal for the '<em><b>Work Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MILESTONE__WORK_SHARE = eINSTANCE.getMilestone_WorkShare();

		/**
		 * The meta object literal for the '<em><b>Pay Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MILESTONE__PAY_SHARE = eINSTANCE.getMilestone_PayShare();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.QuoteImpl <em>Quote</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.QuoteImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getQuote()
		 * @generated
		 */
		EClass QUOTE = eINSTANCE.getQuote();

		/**
		 * The meta object literal for the '<em><b>Commission</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference QUOTE__COMMISSION = eINSTANCE.getQuote_Commission();

		/**
		 * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE__NUMBER = eINSTANCE.getQuote_Number();

		/**
		 * The meta object literal for the '<em><b>State</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE__STATE = eINSTANCE.getQuote_State();

		/**
		 * The meta object literal for the '<em><b>Dated</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE__DATED = eINSTANCE.getQuote_Dated();

		/**
		 * The meta object literal for the '<em><b>Valid Until</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE__VALID_UNTIL = eINSTANCE.getQuote_ValidUntil();

		/**
		 * The meta object literal for the '<em><b>Currency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE__CURRENCY = eINSTANCE.getQuote_Currency();

		/**
		 * The meta object literal for the '<em><b>Total</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE__TOTAL = eINSTANCE.getQuote_Total();

		/**
		 * The meta object literal for the '<em><b>Lines</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference QUOTE__LINES = eINSTANCE.getQuote_Lines();

		/**
		 * The meta object literal for the '<em><b>Changes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE__CHANGES = eINSTANCE.getQuote_Changes();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE__REASON = eINSTANCE.getQuote_Reason();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.QuoteLineImpl <em>Quote Line</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.QuoteLineImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getQuoteLine()
		 * @generated
		 */
		EClass QUOTE_LINE = eINSTANCE.getQuoteLine();

		/**
		 * The meta object literal for the '<em><b>Quote</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference QUOTE_LINE__QUOTE = eINSTANCE.getQuoteLine_Quote();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE_LINE__TEXT = eINSTANCE.getQuoteLine_Text();

		/**
		 * The meta object literal for the '<em><b>Source Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE_LINE__SOURCE_KEY = eINSTANCE.getQuoteLine_SourceKey();

		/**
		 * The meta object literal for the '<em><b>Window Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE_LINE__WINDOW_NAME = eINSTANCE.getQuoteLine_WindowName();

		/**
		 * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE_LINE__QUANTITY = eINSTANCE.getQuoteLine_Quantity();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE_LINE__UNIT = eINSTANCE.getQuoteLine_Unit();

		/**
		 * The meta object literal for the '<em><b>Unit Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE_LINE__UNIT_PRICE = eINSTANCE.getQuoteLine_UnitPrice();

		/**
		 * The meta object literal for the '<em><b>Amount</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute QUOTE_LINE__AMOUNT = eINSTANCE.getQuoteLine_Amount();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.ApprovalImpl <em>Approval</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.ApprovalImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getApproval()
		 * @generated
		 */
		EClass APPROVAL = eINSTANCE.getApproval();

		/**
		 * The meta object literal for the '<em><b>Commission</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference APPROVAL__COMMISSION = eINSTANCE.getApproval_Commission();

		/**
		 * The meta object literal for the '<em><b>On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROVAL__ON = eINSTANCE.getApproval_On();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROVAL__BY = eINSTANCE.getApproval_By();

		/**
		 * The meta object literal for the '<em><b>Quote</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference APPROVAL__QUOTE = eINSTANCE.getApproval_Quote();

		/**
		 * The meta object literal for the '<em><b>Colourway</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference APPROVAL__COLOURWAY = eINSTANCE.getApproval_Colourway();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.SheetImpl <em>Sheet</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.SheetImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSheet()
		 * @generated
		 */
		EClass SHEET = eINSTANCE.getSheet();

		/**
		 * The meta object literal for the '<em><b>Commission</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET__COMMISSION = eINSTANCE.getSheet_Commission();

		/**
		 * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__NUMBER = eINSTANCE.getSheet_Number();

		/**
		 * The meta object literal for the '<em><b>Paper</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__PAPER = eINSTANCE.getSheet_Paper();

		/**
		 * The meta object literal for the '<em><b>Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__WIDTH_MM = eINSTANCE.getSheet_WidthMm();

		/**
		 * The meta object literal for the '<em><b>Height Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__HEIGHT_MM = eINSTANCE.getSheet_HeightMm();

		/**
		 * The meta object literal for the '<em><b>Margin Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__MARGIN_MM = eINSTANCE.getSheet_MarginMm();

		/**
		 * The meta object literal for the '<em><b>Process Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__PROCESS_KEY = eINSTANCE.getSheet_ProcessKey();

		/**
		 * The meta object literal for the '<em><b>Toner Side</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__TONER_SIDE = eINSTANCE.getSheet_TonerSide();

		/**
		 * The meta object literal for the '<em><b>Dpi</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__DPI = eINSTANCE.getSheet_Dpi();

		/**
		 * The meta object literal for the '<em><b>Placements</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET__PLACEMENTS = eINSTANCE.getSheet_Placements();

		/**
		 * The meta object literal for the '<em><b>Files</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET__FILES = eINSTANCE.getSheet_Files();

		/**
		 * The meta object literal for the '<em><b>Content Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__CONTENT_KEY = eINSTANCE.getSheet_ContentKey();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PlacementImpl <em>Placement</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PlacementImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPlacement()
		 * @generated
		 */
		EClass PLACEMENT = eINSTANCE.getPlacement();

		/**
		 * The meta object literal for the '<em><b>Sheet</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PLACEMENT__SHEET = eINSTANCE.getPlacement_Sheet();

		/**
		 * The meta object literal for the '<em><b>Stencil</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PLACEMENT__STENCIL = eINSTANCE.getPlacement_Stencil();

		/**
		 * The meta object literal for the '<em><b>XMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACEMENT__XMM = eINSTANCE.getPlacement_XMm();

		/**
		 * The meta object literal for the '<em><b>YMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACEMENT__YMM = eINSTANCE.getPlacement_YMm();

		/**
		 * The meta object literal for the '<em><b>Rotation Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACEMENT__ROTATION_DEG = eINSTANCE.getPlacement_RotationDeg();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.WindowImpl <em>Window</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.WindowImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getWindow()
		 * @generated
		 */
		EClass WINDOW = eINSTANCE.getWindow();

		/**
		 * The meta object literal for the '<em><b>Format Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WINDOW__FORMAT_VERSION = eINSTANCE.getWindow_FormatVersion();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WINDOW__NAME = eINSTANCE.getWindow_Name();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WINDOW__TITLE = eINSTANCE.getWindow_Title();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WINDOW__NOTE = eINSTANCE.getWindow_Note();

		/**
		 * The meta object literal for the '<em><b>Commission</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WINDOW__COMMISSION = eINSTANCE.getWindow_Commission();

		/**
		 * The meta object literal for the '<em><b>Opening</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WINDOW__OPENING = eINSTANCE.getWindow_Opening();

		/**
		 * The meta object literal for the '<em><b>Colourways</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WINDOW__COLOURWAYS = eINSTANCE.getWindow_Colourways();

		/**
		 * The meta object literal for the '<em><b>Chosen</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WINDOW__CHOSEN = eINSTANCE.getWindow_Chosen();

		/**
		 * The meta object literal for the '<em><b>Panels</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WINDOW__PANELS = eINSTANCE.getWindow_Panels();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.OpeningImpl <em>Opening</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.OpeningImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getOpening()
		 * @generated
		 */
		EClass OPENING = eINSTANCE.getOpening();

		/**
		 * The meta object literal for the '<em><b>Window</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OPENING__WINDOW = eINSTANCE.getOpening_Window();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__KIND = eINSTANCE.getOpening_Kind();

		/**
		 * The meta object literal for the '<em><b>Sight Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__SIGHT_WIDTH_MM = eINSTANCE.getOpening_SightWidthMm();

		/**
		 * The meta object literal for the '<em><b>Sight Height Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__SIGHT_HEIGHT_MM = eINSTANCE.getOpening_SightHeightMm();

		/**
		 * The meta object literal for the '<em><b>Tight Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__TIGHT_WIDTH_MM = eINSTANCE.getOpening_TightWidthMm();

		/**
		 * The meta object literal for the '<em><b>Tight Height Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__TIGHT_HEIGHT_MM = eINSTANCE.getOpening_TightHeightMm();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__COUNT = eINSTANCE.getOpening_Count();

		/**
		 * The meta object literal for the '<em><b>Overhead</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__OVERHEAD = eINSTANCE.getOpening_Overhead();

		/**
		 * The meta object literal for the '<em><b>In Door</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__IN_DOOR = eINSTANCE.getOpening_InDoor();

		/**
		 * The meta object literal for the '<em><b>Template File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__TEMPLATE_FILE = eINSTANCE.getOpening_TemplateFile();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__NOTE = eINSTANCE.getOpening_Note();

		/**
		 * The meta object literal for the '<em><b>Jamb Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__JAMB_MM = eINSTANCE.getOpening_JambMm();

		/**
		 * The meta object literal for the '<em><b>Rise Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__RISE_MM = eINSTANCE.getOpening_RiseMm();

		/**
		 * The meta object literal for the '<em><b>Top Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__TOP_MM = eINSTANCE.getOpening_TopMm();

		/**
		 * The meta object literal for the '<em><b>Right Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__RIGHT_MM = eINSTANCE.getOpening_RightMm();

		/**
		 * The meta object literal for the '<em><b>Bottom Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__BOTTOM_MM = eINSTANCE.getOpening_BottomMm();

		/**
		 * The meta object literal for the '<em><b>Left Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__LEFT_MM = eINSTANCE.getOpening_LeftMm();

		/**
		 * The meta object literal for the '<em><b>Diagonal Down Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__DIAGONAL_DOWN_MM = eINSTANCE.getOpening_DiagonalDownMm();

		/**
		 * The meta object literal for the '<em><b>Diagonal Up Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__DIAGONAL_UP_MM = eINSTANCE.getOpening_DiagonalUpMm();

		/**
		 * The meta object literal for the '<em><b>Rebate Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__REBATE_MM = eINSTANCE.getOpening_RebateMm();

		/**
		 * The meta object literal for the '<em><b>Clearance Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__CLEARANCE_MM = eINSTANCE.getOpening_ClearanceMm();

		/**
		 * The meta object literal for the '<em><b>Outline</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__OUTLINE = eINSTANCE.getOpening_Outline();

		/**
		 * The meta object literal for the '<em><b>Bars Mm</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__BARS_MM = eINSTANCE.getOpening_BarsMm();

		/**
		 * The meta object literal for the '<em><b>Divisions Mm</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPENING__DIVISIONS_MM = eINSTANCE.getOpening_DivisionsMm();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.ColourwayImpl <em>Colourway</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.ColourwayImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getColourway()
		 * @generated
		 */
		EClass COLOURWAY = eINSTANCE.getColourway();

		/**
		 * The meta object literal for the '<em><b>Window</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COLOURWAY__WINDOW = eINSTANCE.getColourway_Window();

		/**
		 * The meta object literal for the '<em><b>Approved</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COLOURWAY__APPROVED = eINSTANCE.getColourway_Approved();

		/**
		 * The meta object literal for the '<em><b>Approved On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COLOURWAY__APPROVED_ON = eINSTANCE.getColourway_ApprovedOn();

		/**
		 * The meta object literal for the '<em><b>Choices</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COLOURWAY__CHOICES = eINSTANCE.getColourway_Choices();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.GlassChoiceImpl <em>Glass Choice</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.GlassChoiceImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getGlassChoice()
		 * @generated
		 */
		EClass GLASS_CHOICE = eINSTANCE.getGlassChoice();

		/**
		 * The meta object literal for the '<em><b>Colourway</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GLASS_CHOICE__COLOURWAY = eINSTANCE.getGlassChoice_Colourway();

		/**
		 * The meta object literal for the '<em><b>Piece</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GLASS_CHOICE__PIECE = eINSTANCE.getGlassChoice_Piece();

		/**
		 * The meta object literal for the '<em><b>Glass</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GLASS_CHOICE__GLASS = eINSTANCE.getGlassChoice_Glass();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PanelImpl <em>Panel</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PanelImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPanel()
		 * @generated
		 */
		EClass PANEL = eINSTANCE.getPanel();

		/**
		 * The meta object literal for the '<em><b>Window</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PANEL__WINDOW = eINSTANCE.getPanel_Window();

		/**
		 * The meta object literal for the '<em><b>XMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PANEL__XMM = eINSTANCE.getPanel_XMm();

		/**
		 * The meta object literal for the '<em><b>YMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PANEL__YMM = eINSTANCE.getPanel_YMm();

		/**
		 * The meta object literal for the '<em><b>Outline</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PANEL__OUTLINE = eINSTANCE.getPanel_Outline();

		/**
		 * The meta object literal for the '<em><b>Join</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PANEL__JOIN = eINSTANCE.getPanel_Join();

		/**
		 * The meta object literal for the '<em><b>Gap Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PANEL__GAP_MM = eINSTANCE.getPanel_GapMm();

		/**
		 * The meta object literal for the '<em><b>Join Stock</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PANEL__JOIN_STOCK = eINSTANCE.getPanel_JoinStock();

		/**
		 * The meta object literal for the '<em><b>Artwork</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PANEL__ARTWORK = eINSTANCE.getPanel_Artwork();

		/**
		 * The meta object literal for the '<em><b>Pieces</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PANEL__PIECES = eINSTANCE.getPanel_Pieces();

		/**
		 * The meta object literal for the '<em><b>Layers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PANEL__LAYERS = eINSTANCE.getPanel_Layers();

		/**
		 * The meta object literal for the '<em><b>Content Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PANEL__CONTENT_KEY = eINSTANCE.getPanel_ContentKey();

		/**
		 * The meta object literal for the '<em><b>Edge Allowance Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PANEL__EDGE_ALLOWANCE_MM = eINSTANCE.getPanel_EdgeAllowanceMm();

		/**
		 * The meta object literal for the '<em><b>Outline Element</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PANEL__OUTLINE_ELEMENT = eINSTANCE.getPanel_OutlineElement();

		/**
		 * The meta object literal for the '<em><b>Mendings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PANEL__MENDINGS = eINSTANCE.getPanel_Mendings();

		/**
		 * The meta object literal for the '<em><b>Join Rules</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PANEL__JOIN_RULES = eINSTANCE.getPanel_JoinRules();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.ArtworkReferenceImpl <em>Artwork Reference</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.ArtworkReferenceImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getArtworkReference()
		 * @generated
		 */
		EClass ARTWORK_REFERENCE = eINSTANCE.getArtworkReference();

		/**
		 * The meta object literal for the '<em><b>Panel</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ARTWORK_REFERENCE__PANEL = eINSTANCE.getArtworkReference_Panel();

		/**
		 * The meta object literal for the '<em><b>File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_REFERENCE__FILE = eINSTANCE.getArtworkReference_File();

		/**
		 * The meta object literal for the '<em><b>Original Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_REFERENCE__ORIGINAL_NAME = eINSTANCE.getArtworkReference_OriginalName();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_REFERENCE__SHA256 = eINSTANCE.getArtworkReference_Sha256();

		/**
		 * The meta object literal for the '<em><b>Revision</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_REFERENCE__REVISION = eINSTANCE.getArtworkReference_Revision();

		/**
		 * The meta object literal for the '<em><b>Brought</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_REFERENCE__BROUGHT = eINSTANCE.getArtworkReference_Brought();

		/**
		 * The meta object literal for the '<em><b>Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_REFERENCE__WIDTH_MM = eINSTANCE.getArtworkReference_WidthMm();

		/**
		 * The meta object literal for the '<em><b>Height Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_REFERENCE__HEIGHT_MM = eINSTANCE.getArtworkReference_HeightMm();

		/**
		 * The meta object literal for the '<em><b>Scale</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_REFERENCE__SCALE = eINSTANCE.getArtworkReference_Scale();

		/**
		 * The meta object literal for the '<em><b>Roles</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ARTWORK_REFERENCE__ROLES = eINSTANCE.getArtworkReference_Roles();

		/**
		 * The meta object literal for the '<em><b>Page</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_REFERENCE__PAGE = eINSTANCE.getArtworkReference_Page();

		/**
		 * The meta object literal for the '<em><b>Roles Confirmed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_REFERENCE__ROLES_CONFIRMED = eINSTANCE.getArtworkReference_RolesConfirmed();

		/**
		 * The meta object literal for the '<em><b>Glass Layers</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_REFERENCE__GLASS_LAYERS = eINSTANCE.getArtworkReference_GlassLayers();

		/**
		 * The meta object literal for the '<em><b>Unused Layers</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_REFERENCE__UNUSED_LAYERS = eINSTANCE.getArtworkReference_UnusedLayers();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.RoleAssignmentImpl <em>Role Assignment</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.RoleAssignmentImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getRoleAssignment()
		 * @generated
		 */
		EClass ROLE_ASSIGNMENT = eINSTANCE.getRoleAssignment();

		/**
		 * The meta object literal for the '<em><b>Artwork</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ROLE_ASSIGNMENT__ARTWORK = eINSTANCE.getRoleAssignment_Artwork();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE_ASSIGNMENT__ROLE = eINSTANCE.getRoleAssignment_Role();

		/**
		 * The meta object literal for the '<em><b>Art Layer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE_ASSIGNMENT__ART_LAYER = eINSTANCE.getRoleAssignment_ArtLayer();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PieceImpl <em>Piece</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PieceImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPiece()
		 * @generated
		 */
		EClass PIECE = eINSTANCE.getPiece();

		/**
		 * The meta object literal for the '<em><b>Panel</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIECE__PANEL = eINSTANCE.getPiece_Panel();

		/**
		 * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__NUMBER = eINSTANCE.getPiece_Number();

		/**
		 * The meta object literal for the '<em><b>Face</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__FACE = eINSTANCE.getPiece_Face();

		/**
		 * The meta object literal for the '<em><b>Net</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__NET = eINSTANCE.getPiece_Net();

		/**
		 * The meta object literal for the '<em><b>Label XMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__LABEL_XMM = eINSTANCE.getPiece_LabelXMm();

		/**
		 * The meta object literal for the '<em><b>Label YMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__LABEL_YMM = eINSTANCE.getPiece_LabelYMm();

		/**
		 * The meta object literal for the '<em><b>Inradius Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__INRADIUS_MM = eINSTANCE.getPiece_InradiusMm();

		/**
		 * The meta object literal for the '<em><b>Area Mm2</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__AREA_MM2 = eINSTANCE.getPiece_AreaMm2();

		/**
		 * The meta object literal for the '<em><b>Net Area Mm2</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__NET_AREA_MM2 = eINSTANCE.getPiece_NetAreaMm2();

		/**
		 * The meta object literal for the '<em><b>Perimeter Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__PERIMETER_MM = eINSTANCE.getPiece_PerimeterMm();

		/**
		 * The meta object literal for the '<em><b>Shape Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__SHAPE_KEY = eINSTANCE.getPiece_ShapeKey();

		/**
		 * The meta object literal for the '<em><b>Problems</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__PROBLEMS = eINSTANCE.getPiece_Problems();

		/**
		 * The meta object literal for the '<em><b>Neighbours</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIECE__NEIGHBOURS = eINSTANCE.getPiece_Neighbours();

		/**
		 * The meta object literal for the '<em><b>Glass</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIECE__GLASS = eINSTANCE.getPiece_Glass();

		/**
		 * The meta object literal for the '<em><b>Choices</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIECE__CHOICES = eINSTANCE.getPiece_Choices();

		/**
		 * The meta object literal for the '<em><b>State</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__STATE = eINSTANCE.getPiece_State();

		/**
		 * The meta object literal for the '<em><b>Retired</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__RETIRED = eINSTANCE.getPiece_Retired();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__NOTE = eINSTANCE.getPiece_Note();

		/**
		 * The meta object literal for the '<em><b>Group</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__GROUP = eINSTANCE.getPiece_Group();

		/**
		 * The meta object literal for the '<em><b>Locked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__LOCKED = eINSTANCE.getPiece_Locked();

		/**
		 * The meta object literal for the '<em><b>Numbered By Hand</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__NUMBERED_BY_HAND = eINSTANCE.getPiece_NumberedByHand();

		/**
		 * The meta object literal for the '<em><b>Came From</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIECE__CAME_FROM = eINSTANCE.getPiece_CameFrom();

		/**
		 * The meta object literal for the '<em><b>Became</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIECE__BECAME = eINSTANCE.getPiece_Became();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.DesignLayerImpl <em>Design Layer</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.DesignLayerImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getDesignLayer()
		 * @generated
		 */
		EClass DESIGN_LAYER = eINSTANCE.getDesignLayer();

		/**
		 * The meta object literal for the '<em><b>Panel</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DESIGN_LAYER__PANEL = eINSTANCE.getDesignLayer_Panel();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DESIGN_LAYER__ROLE = eINSTANCE.getDesignLayer_Role();

		/**
		 * The meta object literal for the '<em><b>Art Layer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DESIGN_LAYER__ART_LAYER = eINSTANCE.getDesignLayer_ArtLayer();

		/**
		 * The meta object literal for the '<em><b>Face</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DESIGN_LAYER__FACE = eINSTANCE.getDesignLayer_Face();

		/**
		 * The meta object literal for the '<em><b>Paint</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DESIGN_LAYER__PAINT = eINSTANCE.getDesignLayer_Paint();

		/**
		 * The meta object literal for the '<em><b>Medium</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DESIGN_LAYER__MEDIUM = eINSTANCE.getDesignLayer_Medium();

		/**
		 * The meta object literal for the '<em><b>Mesh</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DESIGN_LAYER__MESH = eINSTANCE.getDesignLayer_Mesh();

		/**
		 * The meta object literal for the '<em><b>Schedule</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DESIGN_LAYER__SCHEDULE = eINSTANCE.getDesignLayer_Schedule();

		/**
		 * The meta object literal for the '<em><b>Firing Order</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DESIGN_LAYER__FIRING_ORDER = eINSTANCE.getDesignLayer_FiringOrder();

		/**
		 * The meta object literal for the '<em><b>Bleed Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DESIGN_LAYER__BLEED_MM = eINSTANCE.getDesignLayer_BleedMm();

		/**
		 * The meta object literal for the '<em><b>Sight Line</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DESIGN_LAYER__SIGHT_LINE = eINSTANCE.getDesignLayer_SightLine();

		/**
		 * The meta object literal for the '<em><b>Sight Line Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DESIGN_LAYER__SIGHT_LINE_MM = eINSTANCE.getDesignLayer_SightLineMm();

		/**
		 * The meta object literal for the '<em><b>By Hand</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DESIGN_LAYER__BY_HAND = eINSTANCE.getDesignLayer_ByHand();

		/**
		 * The meta object literal for the '<em><b>Recipe</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DESIGN_LAYER__RECIPE = eINSTANCE.getDesignLayer_Recipe();

		/**
		 * The meta object literal for the '<em><b>Stencils</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DESIGN_LAYER__STENCILS = eINSTANCE.getDesignLayer_Stencils();

		/**
		 * The meta object literal for the '<em><b>State</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DESIGN_LAYER__STATE = eINSTANCE.getDesignLayer_State();

		/**
		 * The meta object literal for the '<em><b>Content Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DESIGN_LAYER__CONTENT_KEY = eINSTANCE.getDesignLayer_ContentKey();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.StencilRecipeImpl <em>Stencil Recipe</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.StencilRecipeImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStencilRecipe()
		 * @generated
		 */
		EClass STENCIL_RECIPE = eINSTANCE.getStencilRecipe();

		/**
		 * The meta object literal for the '<em><b>Layer</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STENCIL_RECIPE__LAYER = eINSTANCE.getStencilRecipe_Layer();

		/**
		 * The meta object literal for the '<em><b>Method</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__METHOD = eINSTANCE.getStencilRecipe_Method();

		/**
		 * The meta object literal for the '<em><b>Dpi</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__DPI = eINSTANCE.getStencilRecipe_Dpi();

		/**
		 * The meta object literal for the '<em><b>Lpi</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__LPI = eINSTANCE.getStencilRecipe_Lpi();

		/**
		 * The meta object literal for the '<em><b>Angle Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__ANGLE_DEG = eINSTANCE.getStencilRecipe_AngleDeg();

		/**
		 * The meta object literal for the '<em><b>Dot</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__DOT = eINSTANCE.getStencilRecipe_Dot();

		/**
		 * The meta object literal for the '<em><b>Dot Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__DOT_MM = eINSTANCE.getStencilRecipe_DotMm();

		/**
		 * The meta object literal for the '<em><b>Filter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__FILTER = eINSTANCE.getStencilRecipe_Filter();

		/**
		 * The meta object literal for the '<em><b>Seed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__SEED = eINSTANCE.getStencilRecipe_Seed();

		/**
		 * The meta object literal for the '<em><b>Tone Mode</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__TONE_MODE = eINSTANCE.getStencilRecipe_ToneMode();

		/**
		 * The meta object literal for the '<em><b>Tone From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__TONE_FROM = eINSTANCE.getStencilRecipe_ToneFrom();

		/**
		 * The meta object literal for the '<em><b>Tone To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__TONE_TO = eINSTANCE.getStencilRecipe_ToneTo();

		/**
		 * The meta object literal for the '<em><b>Calibration</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STENCIL_RECIPE__CALIBRATION = eINSTANCE.getStencilRecipe_Calibration();

		/**
		 * The meta object literal for the '<em><b>End Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__END_LOW = eINSTANCE.getStencilRecipe_EndLow();

		/**
		 * The meta object literal for the '<em><b>End High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__END_HIGH = eINSTANCE.getStencilRecipe_EndHigh();

		/**
		 * The meta object literal for the '<em><b>End Rule</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__END_RULE = eINSTANCE.getStencilRecipe_EndRule();

		/**
		 * The meta object literal for the '<em><b>Process Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__PROCESS_KEY = eINSTANCE.getStencilRecipe_ProcessKey();

		/**
		 * The meta object literal for the '<em><b>Mirror</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__MIRROR = eINSTANCE.getStencilRecipe_Mirror();

		/**
		 * The meta object literal for the '<em><b>Open Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__OPEN_MM = eINSTANCE.getStencilRecipe_OpenMm();

		/**
		 * The meta object literal for the '<em><b>Bridge Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__BRIDGE_MM = eINSTANCE.getStencilRecipe_BridgeMm();

		/**
		 * The meta object literal for the '<em><b>Course</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__COURSE = eINSTANCE.getStencilRecipe_Course();

		/**
		 * The meta object literal for the '<em><b>Course Layer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__COURSE_LAYER = eINSTANCE.getStencilRecipe_CourseLayer();

		/**
		 * The meta object literal for the '<em><b>Noise Side</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__NOISE_SIDE = eINSTANCE.getStencilRecipe_NoiseSide();

		/**
		 * The meta object literal for the '<em><b>Clump</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__CLUMP = eINSTANCE.getStencilRecipe_Clump();

		/**
		 * The meta object literal for the '<em><b>Supercell</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__SUPERCELL = eINSTANCE.getStencilRecipe_Supercell();

		/**
		 * The meta object literal for the '<em><b>Curve</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__CURVE = eINSTANCE.getStencilRecipe_Curve();

		/**
		 * The meta object literal for the '<em><b>Trap Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_RECIPE__TRAP_MM = eINSTANCE.getStencilRecipe_TrapMm();

		/**
		 * The meta object literal for the '<em><b>Mends</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STENCIL_RECIPE__MENDS = eINSTANCE.getStencilRecipe_Mends();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.MendedPlaceImpl <em>Mended Place</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.MendedPlaceImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMendedPlace()
		 * @generated
		 */
		EClass MENDED_PLACE = eINSTANCE.getMendedPlace();

		/**
		 * The meta object literal for the '<em><b>Recipe</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MENDED_PLACE__RECIPE = eINSTANCE.getMendedPlace_Recipe();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MENDED_PLACE__KIND = eINSTANCE.getMendedPlace_Kind();

		/**
		 * The meta object literal for the '<em><b>XMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MENDED_PLACE__XMM = eINSTANCE.getMendedPlace_XMm();

		/**
		 * The meta object literal for the '<em><b>YMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MENDED_PLACE__YMM = eINSTANCE.getMendedPlace_YMm();

		/**
		 * The meta object literal for the '<em><b>Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MENDED_PLACE__WIDTH_MM = eINSTANCE.getMendedPlace_WidthMm();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.AcceptedMendImpl <em>Accepted Mend</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.AcceptedMendImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getAcceptedMend()
		 * @generated
		 */
		EClass ACCEPTED_MEND = eINSTANCE.getAcceptedMend();

		/**
		 * The meta object literal for the '<em><b>Panel</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ACCEPTED_MEND__PANEL = eINSTANCE.getAcceptedMend_Panel();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCEPTED_MEND__KEY = eINSTANCE.getAcceptedMend_Key();

		/**
		 * The meta object literal for the '<em><b>Words</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCEPTED_MEND__WORDS = eINSTANCE.getAcceptedMend_Words();

		/**
		 * The meta object literal for the '<em><b>XMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCEPTED_MEND__XMM = eINSTANCE.getAcceptedMend_XMm();

		/**
		 * The meta object literal for the '<em><b>YMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCEPTED_MEND__YMM = eINSTANCE.getAcceptedMend_YMm();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.JoinRuleImpl <em>Join Rule</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.JoinRuleImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getJoinRule()
		 * @generated
		 */
		EClass JOIN_RULE = eINSTANCE.getJoinRule();

		/**
		 * The meta object literal for the '<em><b>Panel</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOIN_RULE__PANEL = eINSTANCE.getJoinRule_Panel();

		/**
		 * The meta object literal for the '<em><b>Art Layer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOIN_RULE__ART_LAYER = eINSTANCE.getJoinRule_ArtLayer();

		/**
		 * The meta object literal for the '<em><b>First</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOIN_RULE__FIRST = eINSTANCE.getJoinRule_First();

		/**
		 * The meta object literal for the '<em><b>Second</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOIN_RULE__SECOND = eINSTANCE.getJoinRule_Second();

		/**
		 * The meta object literal for the '<em><b>Join</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOIN_RULE__JOIN = eINSTANCE.getJoinRule_Join();

		/**
		 * The meta object literal for the '<em><b>Join Stock</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOIN_RULE__JOIN_STOCK = eINSTANCE.getJoinRule_JoinStock();

		/**
		 * The meta object literal for the '<em><b>Gap Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOIN_RULE__GAP_MM = eINSTANCE.getJoinRule_GapMm();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.StencilImpl <em>Stencil</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.StencilImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStencil()
		 * @generated
		 */
		EClass STENCIL = eINSTANCE.getStencil();

		/**
		 * The meta object literal for the '<em><b>Layer</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STENCIL__LAYER = eINSTANCE.getStencil_Layer();

		/**
		 * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__NUMBER = eINSTANCE.getStencil_Number();

		/**
		 * The meta object literal for the '<em><b>Frame</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STENCIL__FRAME = eINSTANCE.getStencil_Frame();

		/**
		 * The meta object literal for the '<em><b>Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__WIDTH_MM = eINSTANCE.getStencil_WidthMm();

		/**
		 * The meta object literal for the '<em><b>Height Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__HEIGHT_MM = eINSTANCE.getStencil_HeightMm();

		/**
		 * The meta object literal for the '<em><b>Origin XMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__ORIGIN_XMM = eINSTANCE.getStencil_OriginXMm();

		/**
		 * The meta object literal for the '<em><b>Origin YMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__ORIGIN_YMM = eINSTANCE.getStencil_OriginYMm();

		/**
		 * The meta object literal for the '<em><b>Width Px</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__WIDTH_PX = eINSTANCE.getStencil_WidthPx();

		/**
		 * The meta object literal for the '<em><b>Height Px</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__HEIGHT_PX = eINSTANCE.getStencil_HeightPx();

		/**
		 * The meta object literal for the '<em><b>Prints</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__PRINTS = eINSTANCE.getStencil_Prints();

		/**
		 * The meta object literal for the '<em><b>Pieces</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STENCIL__PIECES = eINSTANCE.getStencil_Pieces();

		/**
		 * The meta object literal for the '<em><b>Files</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STENCIL__FILES = eINSTANCE.getStencil_Files();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__SHA256 = eINSTANCE.getStencil_Sha256();

		/**
		 * The meta object literal for the '<em><b>Content Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__CONTENT_KEY = eINSTANCE.getStencil_ContentKey();

		/**
		 * The meta object literal for the '<em><b>Coverage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__COVERAGE = eINSTANCE.getStencil_Coverage();

		/**
		 * The meta object literal for the '<em><b>Too Fine</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__TOO_FINE = eINSTANCE.getStencil_TooFine();

		/**
		 * The meta object literal for the '<em><b>Bridges Lost</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__BRIDGES_LOST = eINSTANCE.getStencil_BridgesLost();

		/**
		 * The meta object literal for the '<em><b>Retired</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL__RETIRED = eINSTANCE.getStencil_Retired();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.StencilPieceImpl <em>Stencil Piece</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.StencilPieceImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStencilPiece()
		 * @generated
		 */
		EClass STENCIL_PIECE = eINSTANCE.getStencilPiece();

		/**
		 * The meta object literal for the '<em><b>Stencil</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STENCIL_PIECE__STENCIL = eINSTANCE.getStencilPiece_Stencil();

		/**
		 * The meta object literal for the '<em><b>Piece</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STENCIL_PIECE__PIECE = eINSTANCE.getStencilPiece_Piece();

		/**
		 * The meta object literal for the '<em><b>XMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_PIECE__XMM = eINSTANCE.getStencilPiece_XMm();

		/**
		 * The meta object literal for the '<em><b>YMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_PIECE__YMM = eINSTANCE.getStencilPiece_YMm();

		/**
		 * The meta object literal for the '<em><b>Rotation Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_PIECE__ROTATION_DEG = eINSTANCE.getStencilPiece_RotationDeg();

		/**
		 * The meta object literal for the '<em><b>Spot</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_PIECE__SPOT = eINSTANCE.getStencilPiece_Spot();

		/**
		 * The meta object literal for the '<em><b>Prints</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_PIECE__PRINTS = eINSTANCE.getStencilPiece_Prints();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.SettingImpl <em>Setting</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.SettingImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSetting()
		 * @generated
		 */
		EClass SETTING = eINSTANCE.getSetting();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTING__KEY = eINSTANCE.getSetting_Key();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTING__VALUE = eINSTANCE.getSetting_Value();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.MakingRecordImpl <em>Making Record</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.MakingRecordImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMakingRecord()
		 * @generated
		 */
		EClass MAKING_RECORD = eINSTANCE.getMakingRecord();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKING_RECORD__ID = eINSTANCE.getMakingRecord_Id();

		/**
		 * The meta object literal for the '<em><b>Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKING_RECORD__TIME = eINSTANCE.getMakingRecord_Time();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKING_RECORD__KIND = eINSTANCE.getMakingRecord_Kind();

		/**
		 * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKING_RECORD__WHO = eINSTANCE.getMakingRecord_Who();

		/**
		 * The meta object literal for the '<em><b>Writer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKING_RECORD__WRITER = eINSTANCE.getMakingRecord_Writer();

		/**
		 * The meta object literal for the '<em><b>Used</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKING_RECORD__USED = eINSTANCE.getMakingRecord_Used();

		/**
		 * The meta object literal for the '<em><b>Made</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKING_RECORD__MADE = eINSTANCE.getMakingRecord_Made();

		/**
		 * The meta object literal for the '<em><b>Settings</b></em>' map feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MAKING_RECORD__SETTINGS = eINSTANCE.getMakingRecord_Settings();

		/**
		 * The meta object literal for the '<em><b>Supersedes</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKING_RECORD__SUPERSEDES = eINSTANCE.getMakingRecord_Supersedes();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKING_RECORD__NOTE = eINSTANCE.getMakingRecord_Note();

		/**
		 * The meta object literal for the '<em><b>File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKING_RECORD__FILE = eINSTANCE.getMakingRecord_File();

		/**
		 * The meta object literal for the '<em><b>Line</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MAKING_RECORD__LINE = eINSTANCE.getMakingRecord_Line();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.ArtworkBroughtImpl <em>Artwork Brought</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.ArtworkBroughtImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getArtworkBrought()
		 * @generated
		 */
		EClass ARTWORK_BROUGHT = eINSTANCE.getArtworkBrought();

		/**
		 * The meta object literal for the '<em><b>Window Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_BROUGHT__WINDOW_ID = eINSTANCE.getArtworkBrought_WindowId();

		/**
		 * The meta object literal for the '<em><b>Panel Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_BROUGHT__PANEL_ID = eINSTANCE.getArtworkBrought_PanelId();

		/**
		 * The meta object literal for the '<em><b>Artwork File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_BROUGHT__ARTWORK_FILE = eINSTANCE.getArtworkBrought_ArtworkFile();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_BROUGHT__SHA256 = eINSTANCE.getArtworkBrought_Sha256();

		/**
		 * The meta object literal for the '<em><b>Revision</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_BROUGHT__REVISION = eINSTANCE.getArtworkBrought_Revision();

		/**
		 * The meta object literal for the '<em><b>Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ARTWORK_BROUGHT__WIDTH_MM = eINSTANCE.getArtworkBrought_WidthMm();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PiecesMadeImpl <em>Pieces Made</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PiecesMadeImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPiecesMade()
		 * @generated
		 */
		EClass PIECES_MADE = eINSTANCE.getPiecesMade();

		/**
		 * The meta object literal for the '<em><b>Window Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECES_MADE__WINDOW_ID = eINSTANCE.getPiecesMade_WindowId();

		/**
		 * The meta object literal for the '<em><b>Panel Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECES_MADE__PANEL_ID = eINSTANCE.getPiecesMade_PanelId();

		/**
		 * The meta object literal for the '<em><b>Input Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECES_MADE__INPUT_SHA256 = eINSTANCE.getPiecesMade_InputSha256();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECES_MADE__SHA256 = eINSTANCE.getPiecesMade_Sha256();

		/**
		 * The meta object literal for the '<em><b>Pieces</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECES_MADE__PIECES = eINSTANCE.getPiecesMade_Pieces();

		/**
		 * The meta object literal for the '<em><b>Files</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIECES_MADE__FILES = eINSTANCE.getPiecesMade_Files();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.StencilMadeImpl <em>Stencil Made</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.StencilMadeImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStencilMade()
		 * @generated
		 */
		EClass STENCIL_MADE = eINSTANCE.getStencilMade();

		/**
		 * The meta object literal for the '<em><b>Window Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_MADE__WINDOW_ID = eINSTANCE.getStencilMade_WindowId();

		/**
		 * The meta object literal for the '<em><b>Layer Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_MADE__LAYER_ID = eINSTANCE.getStencilMade_LayerId();

		/**
		 * The meta object literal for the '<em><b>Stencil Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_MADE__STENCIL_ID = eINSTANCE.getStencilMade_StencilId();

		/**
		 * The meta object literal for the '<em><b>Paint Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_MADE__PAINT_ID = eINSTANCE.getStencilMade_PaintId();

		/**
		 * The meta object literal for the '<em><b>Piece Ids</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_MADE__PIECE_IDS = eINSTANCE.getStencilMade_PieceIds();

		/**
		 * The meta object literal for the '<em><b>Input Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_MADE__INPUT_SHA256 = eINSTANCE.getStencilMade_InputSha256();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_MADE__SHA256 = eINSTANCE.getStencilMade_Sha256();

		/**
		 * The meta object literal for the '<em><b>Coverage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_MADE__COVERAGE = eINSTANCE.getStencilMade_Coverage();

		/**
		 * The meta object literal for the '<em><b>Too Fine</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_MADE__TOO_FINE = eINSTANCE.getStencilMade_TooFine();

		/**
		 * The meta object literal for the '<em><b>Bridges Lost</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_MADE__BRIDGES_LOST = eINSTANCE.getStencilMade_BridgesLost();

		/**
		 * The meta object literal for the '<em><b>Width Px</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_MADE__WIDTH_PX = eINSTANCE.getStencilMade_WidthPx();

		/**
		 * The meta object literal for the '<em><b>Height Px</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENCIL_MADE__HEIGHT_PX = eINSTANCE.getStencilMade_HeightPx();

		/**
		 * The meta object literal for the '<em><b>Files</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STENCIL_MADE__FILES = eINSTANCE.getStencilMade_Files();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.SheetMadeImpl <em>Sheet Made</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.SheetMadeImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSheetMade()
		 * @generated
		 */
		EClass SHEET_MADE = eINSTANCE.getSheetMade();

		/**
		 * The meta object literal for the '<em><b>Sheet Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET_MADE__SHEET_ID = eINSTANCE.getSheetMade_SheetId();

		/**
		 * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET_MADE__NUMBER = eINSTANCE.getSheetMade_Number();

		/**
		 * The meta object literal for the '<em><b>Stencil Ids</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET_MADE__STENCIL_IDS = eINSTANCE.getSheetMade_StencilIds();

		/**
		 * The meta object literal for the '<em><b>Input Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET_MADE__INPUT_SHA256 = eINSTANCE.getSheetMade_InputSha256();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET_MADE__SHA256 = eINSTANCE.getSheetMade_Sha256();

		/**
		 * The meta object literal for the '<em><b>Files</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET_MADE__FILES = eINSTANCE.getSheetMade_Files();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.DocumentMadeImpl <em>Document Made</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.DocumentMadeImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getDocumentMade()
		 * @generated
		 */
		EClass DOCUMENT_MADE = eINSTANCE.getDocumentMade();

		/**
		 * The meta object literal for the '<em><b>What</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT_MADE__WHAT = eINSTANCE.getDocumentMade_What();

		/**
		 * The meta object literal for the '<em><b>Files</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DOCUMENT_MADE__FILES = eINSTANCE.getDocumentMade_Files();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.ScreenLoadImpl <em>Screen Load</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.ScreenLoadImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getScreenLoad()
		 * @generated
		 */
		EClass SCREEN_LOAD = eINSTANCE.getScreenLoad();

		/**
		 * The meta object literal for the '<em><b>Frame Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN_LOAD__FRAME_ID = eINSTANCE.getScreenLoad_FrameId();

		/**
		 * The meta object literal for the '<em><b>Sheet Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN_LOAD__SHEET_ID = eINSTANCE.getScreenLoad_SheetId();

		/**
		 * The meta object literal for the '<em><b>Stencil Ids</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN_LOAD__STENCIL_IDS = eINSTANCE.getScreenLoad_StencilIds();

		/**
		 * The meta object literal for the '<em><b>Process Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN_LOAD__PROCESS_KEY = eINSTANCE.getScreenLoad_ProcessKey();

		/**
		 * The meta object literal for the '<em><b>Press C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN_LOAD__PRESS_C = eINSTANCE.getScreenLoad_PressC();

		/**
		 * The meta object literal for the '<em><b>Press Min</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN_LOAD__PRESS_MIN = eINSTANCE.getScreenLoad_PressMin();

		/**
		 * The meta object literal for the '<em><b>Cool Min</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN_LOAD__COOL_MIN = eINSTANCE.getScreenLoad_CoolMin();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.ReclaimImpl <em>Reclaim</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.ReclaimImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getReclaim()
		 * @generated
		 */
		EClass RECLAIM = eINSTANCE.getReclaim();

		/**
		 * The meta object literal for the '<em><b>Frame Ids</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECLAIM__FRAME_IDS = eINSTANCE.getReclaim_FrameIds();

		/**
		 * The meta object literal for the '<em><b>Screen Load Ids</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECLAIM__SCREEN_LOAD_IDS = eINSTANCE.getReclaim_ScreenLoadIds();

		/**
		 * The meta object literal for the '<em><b>Cleaner</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECLAIM__CLEANER = eINSTANCE.getReclaim_Cleaner();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PaintMixImpl <em>Paint Mix</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PaintMixImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPaintMix()
		 * @generated
		 */
		EClass PAINT_MIX = eINSTANCE.getPaintMix();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT_MIX__NAME = eINSTANCE.getPaintMix_Name();

		/**
		 * The meta object literal for the '<em><b>Paint Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT_MIX__PAINT_ID = eINSTANCE.getPaintMix_PaintId();

		/**
		 * The meta object literal for the '<em><b>Lot Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT_MIX__LOT_ID = eINSTANCE.getPaintMix_LotId();

		/**
		 * The meta object literal for the '<em><b>Medium Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT_MIX__MEDIUM_ID = eINSTANCE.getPaintMix_MediumId();

		/**
		 * The meta object literal for the '<em><b>Powder G</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT_MIX__POWDER_G = eINSTANCE.getPaintMix_PowderG();

		/**
		 * The meta object literal for the '<em><b>Medium G</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAINT_MIX__MEDIUM_G = eINSTANCE.getPaintMix_MediumG();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.PrintRunImpl <em>Print Run</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.PrintRunImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPrintRun()
		 * @generated
		 */
		EClass PRINT_RUN = eINSTANCE.getPrintRun();

		/**
		 * The meta object literal for the '<em><b>Screen Load Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINT_RUN__SCREEN_LOAD_ID = eINSTANCE.getPrintRun_ScreenLoadId();

		/**
		 * The meta object literal for the '<em><b>Stencil Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINT_RUN__STENCIL_ID = eINSTANCE.getPrintRun_StencilId();

		/**
		 * The meta object literal for the '<em><b>Mix Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINT_RUN__MIX_ID = eINSTANCE.getPrintRun_MixId();

		/**
		 * The meta object literal for the '<em><b>Window Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINT_RUN__WINDOW_ID = eINSTANCE.getPrintRun_WindowId();

		/**
		 * The meta object literal for the '<em><b>Layer Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINT_RUN__LAYER_ID = eINSTANCE.getPrintRun_LayerId();

		/**
		 * The meta object literal for the '<em><b>Piece Ids</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINT_RUN__PIECE_IDS = eINSTANCE.getPrintRun_PieceIds();

		/**
		 * The meta object literal for the '<em><b>Pulls</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINT_RUN__PULLS = eINSTANCE.getPrintRun_Pulls();

		/**
		 * The meta object literal for the '<em><b>Temperature C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINT_RUN__TEMPERATURE_C = eINSTANCE.getPrintRun_TemperatureC();

		/**
		 * The meta object literal for the '<em><b>Humidity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINT_RUN__HUMIDITY = eINSTANCE.getPrintRun_Humidity();

		/**
		 * The meta object literal for the '<em><b>Bed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRINT_RUN__BED = eINSTANCE.getPrintRun_Bed();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.FiringImpl <em>Firing</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.FiringImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getFiring()
		 * @generated
		 */
		EClass FIRING = eINSTANCE.getFiring();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING__NAME = eINSTANCE.getFiring_Name();

		/**
		 * The meta object literal for the '<em><b>Kiln Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING__KILN_ID = eINSTANCE.getFiring_KilnId();

		/**
		 * The meta object literal for the '<em><b>Schedule Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING__SCHEDULE_ID = eINSTANCE.getFiring_ScheduleId();

		/**
		 * The meta object literal for the '<em><b>Segments</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIRING__SEGMENTS = eINSTANCE.getFiring_Segments();

		/**
		 * The meta object literal for the '<em><b>Load</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIRING__LOAD = eINSTANCE.getFiring_Load();

		/**
		 * The meta object literal for the '<em><b>Curve File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING__CURVE_FILE = eINSTANCE.getFiring_CurveFile();

		/**
		 * The meta object literal for the '<em><b>Curve Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING__CURVE_SHA256 = eINSTANCE.getFiring_CurveSha256();

		/**
		 * The meta object literal for the '<em><b>Peak C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING__PEAK_C = eINSTANCE.getFiring_PeakC();

		/**
		 * The meta object literal for the '<em><b>Energy Kwh</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRING__ENERGY_KWH = eINSTANCE.getFiring_EnergyKwh();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.RunSegmentImpl <em>Run Segment</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.RunSegmentImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getRunSegment()
		 * @generated
		 */
		EClass RUN_SEGMENT = eINSTANCE.getRunSegment();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_SEGMENT__NAME = eINSTANCE.getRunSegment_Name();

		/**
		 * The meta object literal for the '<em><b>Rate KPer H</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_SEGMENT__RATE_KPER_H = eINSTANCE.getRunSegment_RateKPerH();

		/**
		 * The meta object literal for the '<em><b>Target C</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_SEGMENT__TARGET_C = eINSTANCE.getRunSegment_TargetC();

		/**
		 * The meta object literal for the '<em><b>Soak Min</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_SEGMENT__SOAK_MIN = eINSTANCE.getRunSegment_SoakMin();

		/**
		 * The meta object literal for the '<em><b>Vent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RUN_SEGMENT__VENT = eINSTANCE.getRunSegment_Vent();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.ShelfPlaceImpl <em>Shelf Place</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.ShelfPlaceImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getShelfPlace()
		 * @generated
		 */
		EClass SHELF_PLACE = eINSTANCE.getShelfPlace();

		/**
		 * The meta object literal for the '<em><b>Window Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHELF_PLACE__WINDOW_ID = eINSTANCE.getShelfPlace_WindowId();

		/**
		 * The meta object literal for the '<em><b>Piece Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHELF_PLACE__PIECE_ID = eINSTANCE.getShelfPlace_PieceId();

		/**
		 * The meta object literal for the '<em><b>Layer Ids</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHELF_PLACE__LAYER_IDS = eINSTANCE.getShelfPlace_LayerIds();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHELF_PLACE__PLACE = eINSTANCE.getShelfPlace_Place();

		/**
		 * The meta object literal for the '<em><b>Shelf</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHELF_PLACE__SHELF = eINSTANCE.getShelfPlace_Shelf();

		/**
		 * The meta object literal for the '<em><b>XMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHELF_PLACE__XMM = eINSTANCE.getShelfPlace_XMm();

		/**
		 * The meta object literal for the '<em><b>YMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHELF_PLACE__YMM = eINSTANCE.getShelfPlace_YMm();

		/**
		 * The meta object literal for the '<em><b>Rotation Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHELF_PLACE__ROTATION_DEG = eINSTANCE.getShelfPlace_RotationDeg();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.GlazingImpl <em>Glazing</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.GlazingImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getGlazing()
		 * @generated
		 */
		EClass GLAZING = eINSTANCE.getGlazing();

		/**
		 * The meta object literal for the '<em><b>Window Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLAZING__WINDOW_ID = eINSTANCE.getGlazing_WindowId();

		/**
		 * The meta object literal for the '<em><b>Panel Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLAZING__PANEL_ID = eINSTANCE.getGlazing_PanelId();

		/**
		 * The meta object literal for the '<em><b>Piece Ids</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLAZING__PIECE_IDS = eINSTANCE.getGlazing_PieceIds();

		/**
		 * The meta object literal for the '<em><b>Join</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLAZING__JOIN = eINSTANCE.getGlazing_Join();

		/**
		 * The meta object literal for the '<em><b>Mass Kg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLAZING__MASS_KG = eINSTANCE.getGlazing_MassKg();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.FixingImpl <em>Fixing</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.FixingImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getFixing()
		 * @generated
		 */
		EClass FIXING = eINSTANCE.getFixing();

		/**
		 * The meta object literal for the '<em><b>Window Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXING__WINDOW_ID = eINSTANCE.getFixing_WindowId();

		/**
		 * The meta object literal for the '<em><b>Panel Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXING__PANEL_ID = eINSTANCE.getFixing_PanelId();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIXING__PLACE = eINSTANCE.getFixing_Place();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.DefectImpl <em>Defect</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.DefectImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getDefect()
		 * @generated
		 */
		EClass DEFECT = eINSTANCE.getDefect();

		/**
		 * The meta object literal for the '<em><b>Window Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEFECT__WINDOW_ID = eINSTANCE.getDefect_WindowId();

		/**
		 * The meta object literal for the '<em><b>Piece Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEFECT__PIECE_ID = eINSTANCE.getDefect_PieceId();

		/**
		 * The meta object literal for the '<em><b>Layer Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEFECT__LAYER_ID = eINSTANCE.getDefect_LayerId();

		/**
		 * The meta object literal for the '<em><b>Defect Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEFECT__DEFECT_KIND = eINSTANCE.getDefect_DefectKind();

		/**
		 * The meta object literal for the '<em><b>Found At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEFECT__FOUND_AT = eINSTANCE.getDefect_FoundAt();

		/**
		 * The meta object literal for the '<em><b>Severity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEFECT__SEVERITY = eINSTANCE.getDefect_Severity();

		/**
		 * The meta object literal for the '<em><b>XMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEFECT__XMM = eINSTANCE.getDefect_XMm();

		/**
		 * The meta object literal for the '<em><b>YMm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEFECT__YMM = eINSTANCE.getDefect_YMm();

		/**
		 * The meta object literal for the '<em><b>Photo</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEFECT__PHOTO = eINSTANCE.getDefect_Photo();

		/**
		 * The meta object literal for the '<em><b>Suspected Cause</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEFECT__SUSPECTED_CAUSE = eINSTANCE.getDefect_SuspectedCause();

		/**
		 * The meta object literal for the '<em><b>Disposition</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEFECT__DISPOSITION = eINSTANCE.getDefect_Disposition();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.RemakeImpl <em>Remake</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.RemakeImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getRemake()
		 * @generated
		 */
		EClass REMAKE = eINSTANCE.getRemake();

		/**
		 * The meta object literal for the '<em><b>Window Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMAKE__WINDOW_ID = eINSTANCE.getRemake_WindowId();

		/**
		 * The meta object literal for the '<em><b>Piece Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMAKE__PIECE_ID = eINSTANCE.getRemake_PieceId();

		/**
		 * The meta object literal for the '<em><b>Layer Ids</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMAKE__LAYER_IDS = eINSTANCE.getRemake_LayerIds();

		/**
		 * The meta object literal for the '<em><b>Defect Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMAKE__DEFECT_ID = eINSTANCE.getRemake_DefectId();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMAKE__REASON = eINSTANCE.getRemake_Reason();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.NoteImpl <em>Note</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.NoteImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getNote()
		 * @generated
		 */
		EClass NOTE = eINSTANCE.getNote();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NOTE__TEXT = eINSTANCE.getNote_Text();

		/**
		 * The meta object literal for the '<em><b>About Ids</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NOTE__ABOUT_IDS = eINSTANCE.getNote_AboutIds();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.CostLineImpl <em>Cost Line</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.CostLineImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getCostLine()
		 * @generated
		 */
		EClass COST_LINE = eINSTANCE.getCostLine();

		/**
		 * The meta object literal for the '<em><b>Source Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_LINE__SOURCE_KEY = eINSTANCE.getCostLine_SourceKey();

		/**
		 * The meta object literal for the '<em><b>What</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_LINE__WHAT = eINSTANCE.getCostLine_What();

		/**
		 * The meta object literal for the '<em><b>Window Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_LINE__WINDOW_ID = eINSTANCE.getCostLine_WindowId();

		/**
		 * The meta object literal for the '<em><b>Estimate</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_LINE__ESTIMATE = eINSTANCE.getCostLine_Estimate();

		/**
		 * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_LINE__QUANTITY = eINSTANCE.getCostLine_Quantity();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_LINE__UNIT = eINSTANCE.getCostLine_Unit();

		/**
		 * The meta object literal for the '<em><b>Unit Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_LINE__UNIT_PRICE = eINSTANCE.getCostLine_UnitPrice();

		/**
		 * The meta object literal for the '<em><b>Amount</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_LINE__AMOUNT = eINSTANCE.getCostLine_Amount();

		/**
		 * The meta object literal for the '<em><b>Currency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_LINE__CURRENCY = eINSTANCE.getCostLine_Currency();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.StockMoveImpl <em>Stock Move</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.StockMoveImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStockMove()
		 * @generated
		 */
		EClass STOCK_MOVE = eINSTANCE.getStockMove();

		/**
		 * The meta object literal for the '<em><b>Item Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_MOVE__ITEM_ID = eINSTANCE.getStockMove_ItemId();

		/**
		 * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_MOVE__QUANTITY = eINSTANCE.getStockMove_Quantity();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_MOVE__UNIT = eINSTANCE.getStockMove_Unit();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_MOVE__REASON = eINSTANCE.getStockMove_Reason();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.ApprovedImpl <em>Approved</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.ApprovedImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getApproved()
		 * @generated
		 */
		EClass APPROVED = eINSTANCE.getApproved();

		/**
		 * The meta object literal for the '<em><b>Approval Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROVED__APPROVAL_ID = eINSTANCE.getApproved_ApprovalId();

		/**
		 * The meta object literal for the '<em><b>Quote Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROVED__QUOTE_ID = eINSTANCE.getApproved_QuoteId();

		/**
		 * The meta object literal for the '<em><b>Colourway Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute APPROVED__COLOURWAY_ID = eINSTANCE.getApproved_ColourwayId();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.OtherRecordImpl <em>Other Record</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.OtherRecordImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getOtherRecord()
		 * @generated
		 */
		EClass OTHER_RECORD = eINSTANCE.getOtherRecord();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.StockSheetImpl <em>Stock Sheet</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.StockSheetImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getStockSheet()
		 * @generated
		 */
		EClass STOCK_SHEET = eINSTANCE.getStockSheet();

		/**
		 * The meta object literal for the '<em><b>Glass</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STOCK_SHEET__GLASS = eINSTANCE.getStockSheet_Glass();

		/**
		 * The meta object literal for the '<em><b>Width Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_SHEET__WIDTH_MM = eINSTANCE.getStockSheet_WidthMm();

		/**
		 * The meta object literal for the '<em><b>Height Mm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_SHEET__HEIGHT_MM = eINSTANCE.getStockSheet_HeightMm();

		/**
		 * The meta object literal for the '<em><b>Outline</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_SHEET__OUTLINE = eINSTANCE.getStockSheet_Outline();

		/**
		 * The meta object literal for the '<em><b>Grain Deg</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_SHEET__GRAIN_DEG = eINSTANCE.getStockSheet_GrainDeg();

		/**
		 * The meta object literal for the '<em><b>Offcut</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_SHEET__OFFCUT = eINSTANCE.getStockSheet_Offcut();

		/**
		 * The meta object literal for the '<em><b>Cut From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_SHEET__CUT_FROM = eINSTANCE.getStockSheet_CutFrom();

		/**
		 * The meta object literal for the '<em><b>Used Up</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_SHEET__USED_UP = eINSTANCE.getStockSheet_UsedUp();

		/**
		 * The meta object literal for the '<em><b>Flaws</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STOCK_SHEET__FLAWS = eINSTANCE.getStockSheet_Flaws();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.impl.GlassFlawImpl <em>Glass Flaw</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.impl.GlassFlawImpl
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getGlassFlaw()
		 * @generated
		 */
		EClass GLASS_FLAW = eINSTANCE.getGlassFlaw();

		/**
		 * The meta object literal for the '<em><b>Sheet</b></em>' container reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GLASS_FLAW__SHEET = eINSTANCE.getGlassFlaw_Sheet();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_FLAW__KIND = eINSTANCE.getGlassFlaw_Kind();

		/**
		 * The meta object literal for the '<em><b>Outline</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GLASS_FLAW__OUTLINE = eINSTANCE.getGlassFlaw_Outline();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.UnitSystem <em>Unit System</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.UnitSystem
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getUnitSystem()
		 * @generated
		 */
		EEnum UNIT_SYSTEM = eINSTANCE.getUnitSystem();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.LayerRole <em>Layer Role</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.LayerRole
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getLayerRole()
		 * @generated
		 */
		EEnum LAYER_ROLE = eINSTANCE.getLayerRole();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.Face <em>Face</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.Face
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getFace()
		 * @generated
		 */
		EEnum FACE = eINSTANCE.getFace();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.MakingState <em>Making State</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.MakingState
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMakingState()
		 * @generated
		 */
		EEnum MAKING_STATE = eINSTANCE.getMakingState();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.JoinKind <em>Join Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.JoinKind
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getJoinKind()
		 * @generated
		 */
		EEnum JOIN_KIND = eINSTANCE.getJoinKind();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.OpeningKind <em>Opening Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.OpeningKind
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getOpeningKind()
		 * @generated
		 */
		EEnum OPENING_KIND = eINSTANCE.getOpeningKind();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.PaintKind <em>Paint Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.PaintKind
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getPaintKind()
		 * @generated
		 */
		EEnum PAINT_KIND = eINSTANCE.getPaintKind();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.MediumBase <em>Medium Base</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.MediumBase
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMediumBase()
		 * @generated
		 */
		EEnum MEDIUM_BASE = eINSTANCE.getMediumBase();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.SheetMaterial <em>Sheet Material</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.SheetMaterial
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSheetMaterial()
		 * @generated
		 */
		EEnum SHEET_MATERIAL = eINSTANCE.getSheetMaterial();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.TonerSide <em>Toner Side</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.TonerSide
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getTonerSide()
		 * @generated
		 */
		EEnum TONER_SIDE = eINSTANCE.getTonerSide();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.SightLineRule <em>Sight Line Rule</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.SightLineRule
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getSightLineRule()
		 * @generated
		 */
		EEnum SIGHT_LINE_RULE = eINSTANCE.getSightLineRule();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.ToneMode <em>Tone Mode</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.ToneMode
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getToneMode()
		 * @generated
		 */
		EEnum TONE_MODE = eINSTANCE.getToneMode();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.MirrorRule <em>Mirror Rule</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.MirrorRule
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMirrorRule()
		 * @generated
		 */
		EEnum MIRROR_RULE = eINSTANCE.getMirrorRule();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.EndRule <em>End Rule</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.EndRule
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getEndRule()
		 * @generated
		 */
		EEnum END_RULE = eINSTANCE.getEndRule();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.MendKind <em>Mend Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.MendKind
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMendKind()
		 * @generated
		 */
		EEnum MEND_KIND = eINSTANCE.getMendKind();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.QuoteState <em>Quote State</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.QuoteState
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getQuoteState()
		 * @generated
		 */
		EEnum QUOTE_STATE = eINSTANCE.getQuoteState();

		/**
		 * The meta object literal for the '{@link saddlebar.model.commission.Disposition <em>Disposition</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.commission.Disposition
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getDisposition()
		 * @generated
		 */
		EEnum DISPOSITION = eINSTANCE.getDisposition();

		/**
		 * The meta object literal for the '<em>Moment</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.Instant
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getMoment()
		 * @generated
		 */
		EDataType MOMENT = eINSTANCE.getMoment();

		/**
		 * The meta object literal for the '<em>Day</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.LocalDate
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getDay()
		 * @generated
		 */
		EDataType DAY = eINSTANCE.getDay();

		/**
		 * The meta object literal for the '<em>Outline</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see saddlebar.model.art.OutlineMm
		 * @see saddlebar.model.commission.impl.CommissionPackageImpl#getOutline()
		 * @generated
		 */
		EDataType OUTLINE = eINSTANCE.getOutline();

	}

} //CommissionPackage
