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
 * A representation of the literals of the enumeration '<em><b>Mend Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What is done to a narrow place of a stencil.
 * <!-- end-model-doc -->
 * @see saddlebar.model.commission.CommissionPackage#getMendKind()
 * @model
 * @generated
 */
public enum MendKind implements Enumerator {
	/**
	 * The '<em><b>THICKEN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * An opening that is too fine to print is made wider.
	 * <!-- end-model-doc -->
	 * @see #THICKEN_VALUE
	 * @generated
	 * @ordered
	 */
	THICKEN(0, "THICKEN", "thicken"),

	/**
	 * The '<em><b>STRENGTHEN</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A bridge that is too fine to hold is made wider.
	 * <!-- end-model-doc -->
	 * @see #STRENGTHEN_VALUE
	 * @generated
	 * @ordered
	 */
	STRENGTHEN(1, "STRENGTHEN", "strengthen");

	/**
	 * The '<em><b>THICKEN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * An opening that is too fine to print is made wider.
	 * <!-- end-model-doc -->
	 * @see #THICKEN
	 * @model literal="thicken"
	 * @generated
	 * @ordered
	 */
	public static final int THICKEN_VALUE = 0;

	/**
	 * The '<em><b>STRENGTHEN</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A bridge that is too fine to hold is made wider.
	 * <!-- end-model-doc -->
	 * @see #STRENGTHEN
	 * @model literal="strengthen"
	 * @generated
	 * @ordered
	 */
	public static final int STRENGTHEN_VALUE = 1;

	/**
	 * An array of all the '<em><b>Mend Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final MendKind[] VALUES_ARRAY =
		new MendKind[] {
			THICKEN,
			STRENGTHEN,
		};

	/**
	 * A public read-only list of all the '<em><b>Mend Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<MendKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Mend Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MendKind get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MendKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Mend Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MendKind getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			MendKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Mend Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static MendKind get(int value) {
		switch (value) {
			case THICKEN_VALUE: return THICKEN;
			case STRENGTHEN_VALUE: return STRENGTHEN;
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
	private MendKind(int value, String name, String literal) {
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
	
} //MendKind
