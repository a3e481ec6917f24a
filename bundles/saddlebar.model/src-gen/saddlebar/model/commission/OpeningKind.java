/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Opening Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * The shape of an opening.
 * <!-- end-model-doc -->
 * @see saddlebar.model.commission.CommissionPackage#getOpeningKind()
 * @model
 * @generated
 */
public enum OpeningKind implements Enumerator {
	/**
	 * The '<em><b>RECTANGLE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RECTANGLE_VALUE
	 * @generated
	 * @ordered
	 */
	RECTANGLE(0, "RECTANGLE", "rectangle"),

	/**
	 * The '<em><b>SEGMENTAL HEAD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEGMENTAL_HEAD_VALUE
	 * @generated
	 * @ordered
	 */
	SEGMENTAL_HEAD(1, "SEGMENTAL_HEAD", "segmental head"),

	/**
	 * The '<em><b>ROUND HEAD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROUND_HEAD_VALUE
	 * @generated
	 * @ordered
	 */
	ROUND_HEAD(2, "ROUND_HEAD", "round head"),

	/**
	 * The '<em><b>POINTED HEAD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POINTED_HEAD_VALUE
	 * @generated
	 * @ordered
	 */
	POINTED_HEAD(3, "POINTED_HEAD", "pointed head"),

	/**
	 * The '<em><b>ROUNDEL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROUNDEL_VALUE
	 * @generated
	 * @ordered
	 */
	ROUNDEL(4, "ROUNDEL", "roundel"),

	/**
	 * The '<em><b>SHAPED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * By a template.
	 * <!-- end-model-doc -->
	 * @see #SHAPED_VALUE
	 * @generated
	 * @ordered
	 */
	SHAPED(5, "SHAPED", "shaped"), /**
	 * The '<em><b>THREE CENTRED HEAD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #THREE_CENTRED_HEAD_VALUE
	 * @generated
	 * @ordered
	 */
	THREE_CENTRED_HEAD(6, "THREE_CENTRED_HEAD", "three-centred head"), /**
	 * The '<em><b>OGEE HEAD</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OGEE_HEAD_VALUE
	 * @generated
	 * @ordered
	 */
	OGEE_HEAD(7, "OGEE_HEAD", "ogee head"), /**
	 * The '<em><b>TREFOIL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TREFOIL_VALUE
	 * @generated
	 * @ordered
	 */
	TREFOIL(8, "TREFOIL", "trefoil"), /**
	 * The '<em><b>QUATREFOIL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #QUATREFOIL_VALUE
	 * @generated
	 * @ordered
	 */
	QUATREFOIL(9, "QUATREFOIL", "quatrefoil"), /**
	 * The '<em><b>CINQUEFOIL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CINQUEFOIL_VALUE
	 * @generated
	 * @ordered
	 */
	CINQUEFOIL(10, "CINQUEFOIL", "cinquefoil");

	/**
	 * The '<em><b>RECTANGLE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RECTANGLE
	 * @model literal="rectangle"
	 * @generated
	 * @ordered
	 */
	public static final int RECTANGLE_VALUE = 0;

	/**
	 * The '<em><b>SEGMENTAL HEAD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SEGMENTAL_HEAD
	 * @model literal="segmental head"
	 * @generated
	 * @ordered
	 */
	public static final int SEGMENTAL_HEAD_VALUE = 1;

	/**
	 * The '<em><b>ROUND HEAD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROUND_HEAD
	 * @model literal="round head"
	 * @generated
	 * @ordered
	 */
	public static final int ROUND_HEAD_VALUE = 2;

	/**
	 * The '<em><b>POINTED HEAD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #POINTED_HEAD
	 * @model literal="pointed head"
	 * @generated
	 * @ordered
	 */
	public static final int POINTED_HEAD_VALUE = 3;

	/**
	 * The '<em><b>ROUNDEL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROUNDEL
	 * @model literal="roundel"
	 * @generated
	 * @ordered
	 */
	public static final int ROUNDEL_VALUE = 4;

	/**
	 * The '<em><b>SHAPED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * By a template.
	 * <!-- end-model-doc -->
	 * @see #SHAPED
	 * @model literal="shaped"
	 * @generated
	 * @ordered
	 */
	public static final int SHAPED_VALUE = 5;

	/**
	 * The '<em><b>THREE CENTRED HEAD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #THREE_CENTRED_HEAD
	 * @model literal="three-centred head"
	 * @generated
	 * @ordered
	 */
	public static final int THREE_CENTRED_HEAD_VALUE = 6;

	/**
	 * The '<em><b>OGEE HEAD</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OGEE_HEAD
	 * @model literal="ogee head"
	 * @generated
	 * @ordered
	 */
	public static final int OGEE_HEAD_VALUE = 7;

	/**
	 * The '<em><b>TREFOIL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TREFOIL
	 * @model literal="trefoil"
	 * @generated
	 * @ordered
	 */
	public static final int TREFOIL_VALUE = 8;

	/**
	 * The '<em><b>QUATREFOIL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #QUATREFOIL
	 * @model literal="quatrefoil"
	 * @generated
	 * @ordered
	 */
	public static final int QUATREFOIL_VALUE = 9;

	/**
	 * The '<em><b>CINQUEFOIL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CINQUEFOIL
	 * @model literal="cinquefoil"
	 * @generated
	 * @ordered
	 */
	public static final int CINQUEFOIL_VALUE = 10;

	/**
	 * An array of all the '<em><b>Opening Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final OpeningKind[] VALUES_ARRAY =
		new OpeningKind[] {
			RECTANGLE,
			SEGMENTAL_HEAD,
			ROUND_HEAD,
			POINTED_HEAD,
			ROUNDEL,
			SHAPED,
			THREE_CENTRED_HEAD,
			OGEE_HEAD,
			TREFOIL,
			QUATREFOIL,
			CINQUEFOIL,
		};

	/**
	 * A public read-only list of all the '<em><b>Opening Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<OpeningKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Opening Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static OpeningKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			OpeningKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Opening Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static OpeningKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			OpeningKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Opening Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static OpeningKind get(int value) {
		switch (value) {
			case RECTANGLE_VALUE: return RECTANGLE;
			case SEGMENTAL_HEAD_VALUE: return SEGMENTAL_HEAD;
			case ROUND_HEAD_VALUE: return ROUND_HEAD;
			case POINTED_HEAD_VALUE: return POINTED_HEAD;
			case ROUNDEL_VALUE: return ROUNDEL;
			case SHAPED_VALUE: return SHAPED;
			case THREE_CENTRED_HEAD_VALUE: return THREE_CENTRED_HEAD;
			case OGEE_HEAD_VALUE: return OGEE_HEAD;
			case TREFOIL_VALUE: return TREFOIL;
			case QUATREFOIL_VALUE: return QUATREFOIL;
			case CINQUEFOIL_VALUE: return CINQUEFOIL;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private OpeningKind(int value, String name, String literal) {
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue() {
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral() {
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		return literal;
	}
	
} //OpeningKind
