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
 * A representation of the literals of the enumeration '<em><b>Making State</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Where a piece, a layer or a stencil stands in the making; derived from the records.
 * <!-- end-model-doc -->
 * @see saddlebar.model.commission.CommissionPackage#getMakingState()
 * @model
 * @generated
 */
public enum MakingState implements Enumerator {
	/**
	 * The '<em><b>DRAWN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DRAWN_VALUE
	 * @generated
	 * @ordered
	 */
	DRAWN(0, "DRAWN", "drawn"),

	/**
	 * The '<em><b>ON SHEET</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ON_SHEET_VALUE
	 * @generated
	 * @ordered
	 */
	ON_SHEET(1, "ON_SHEET", "on sheet"),

	/**
	 * The '<em><b>ON SCREEN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ON_SCREEN_VALUE
	 * @generated
	 * @ordered
	 */
	ON_SCREEN(2, "ON_SCREEN", "on screen"),

	/**
	 * The '<em><b>PRINTED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PRINTED_VALUE
	 * @generated
	 * @ordered
	 */
	PRINTED(3, "PRINTED", "printed"),

	/**
	 * The '<em><b>FIRED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FIRED_VALUE
	 * @generated
	 * @ordered
	 */
	FIRED(4, "FIRED", "fired"),

	/**
	 * The '<em><b>GLAZED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GLAZED_VALUE
	 * @generated
	 * @ordered
	 */
	GLAZED(5, "GLAZED", "glazed"),

	/**
	 * The '<em><b>IN DOUBT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IN_DOUBT_VALUE
	 * @generated
	 * @ordered
	 */
	IN_DOUBT(6, "IN_DOUBT", "in doubt"),

	/**
	 * The '<em><b>TO REMAKE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TO_REMAKE_VALUE
	 * @generated
	 * @ordered
	 */
	TO_REMAKE(7, "TO_REMAKE", "to remake");

	/**
	 * The '<em><b>DRAWN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DRAWN
	 * @model literal="drawn"
	 * @generated
	 * @ordered
	 */
	public static final int DRAWN_VALUE = 0;

	/**
	 * The '<em><b>ON SHEET</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ON_SHEET
	 * @model literal="on sheet"
	 * @generated
	 * @ordered
	 */
	public static final int ON_SHEET_VALUE = 1;

	/**
	 * The '<em><b>ON SCREEN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ON_SCREEN
	 * @model literal="on screen"
	 * @generated
	 * @ordered
	 */
	public static final int ON_SCREEN_VALUE = 2;

	/**
	 * The '<em><b>PRINTED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PRINTED
	 * @model literal="printed"
	 * @generated
	 * @ordered
	 */
	public static final int PRINTED_VALUE = 3;

	/**
	 * The '<em><b>FIRED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #FIRED
	 * @model literal="fired"
	 * @generated
	 * @ordered
	 */
	public static final int FIRED_VALUE = 4;

	/**
	 * The '<em><b>GLAZED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GLAZED
	 * @model literal="glazed"
	 * @generated
	 * @ordered
	 */
	public static final int GLAZED_VALUE = 5;

	/**
	 * The '<em><b>IN DOUBT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IN_DOUBT
	 * @model literal="in doubt"
	 * @generated
	 * @ordered
	 */
	public static final int IN_DOUBT_VALUE = 6;

	/**
	 * The '<em><b>TO REMAKE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #TO_REMAKE
	 * @model literal="to remake"
	 * @generated
	 * @ordered
	 */
	public static final int TO_REMAKE_VALUE = 7;

	/**
	 * An array of all the '<em><b>Making State</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final MakingState[] VALUES_ARRAY =
		new MakingState[] {
			DRAWN,
			ON_SHEET,
			ON_SCREEN,
			PRINTED,
			FIRED,
			GLAZED,
			IN_DOUBT,
			TO_REMAKE,
		};

	/**
	 * A public read-only list of all the '<em><b>Making State</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<MakingState> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Making State</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MakingState get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MakingState result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Making State</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MakingState getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MakingState result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Making State</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MakingState get(int value) {
		switch (value) {
			case DRAWN_VALUE: return DRAWN;
			case ON_SHEET_VALUE: return ON_SHEET;
			case ON_SCREEN_VALUE: return ON_SCREEN;
			case PRINTED_VALUE: return PRINTED;
			case FIRED_VALUE: return FIRED;
			case GLAZED_VALUE: return GLAZED;
			case IN_DOUBT_VALUE: return IN_DOUBT;
			case TO_REMAKE_VALUE: return TO_REMAKE;
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
	private MakingState(int value, String name, String literal) {
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
	
} //MakingState
