/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import hullwright.network.Origin;
import hullwright.quantity.ScalarQuantity;
import java.util.Comparator;
import java.util.Optional;

/**
 * What is in force for a rule in a house, and how the rule tells what it finds.
 */
public abstract sealed class UnderCheck permits BoatUnderCheck, SeriesUnderCheck {

	private final RuleInForce inForce;
	private final HouseDemands house;

	UnderCheck(RuleInForce inForce, HouseDemands house) {
		this.inForce = inForce;
		this.house = house;
	}

	/** What the house asks of its texts beside the limits of rules. */
	public HouseDemands house() {
		return house;
	}

	/**
	 * The severest band whose limit a value exceeds, or empty if it keeps all limits.
	 *
	 * @param value a quantity of the kind of the rule's limits
	 */
	public <Q extends ScalarQuantity<Q>> Optional<Band> bandOf(Q value) {
		return inForce.bands().stream()
				.filter(band -> value.exceeds(sameKind(value, band)))
				.max(Comparator.comparing(Band::severity));
	}

	@SuppressWarnings("unchecked")
	private static <Q extends ScalarQuantity<Q>> Q sameKind(Q value, Band band) {
		if (value.getClass() != band.limit().getClass()) {
			throw new IllegalArgumentException("a " + value.dimension().label() + " has no limit of " + band.limit());
		}
		return (Q) band.limit();
	}

	/**
	 * The value of a parameter of this rule, as the profile leaves it.
	 *
	 * @param kind what it is: the type of a quantity, or Integer
	 * @throws IllegalArgumentException if the rule declares no such parameter of this kind
	 */
	public <T> T parameter(String name, Class<T> kind) {
		RuleInForce.ParameterInForce found = inForce.parameters().get(name);
		if (found == null || !kind.isInstance(found.value())) {
			throw new IllegalArgumentException(inForce.description().id() + " declares no parameter " + name + " of this kind");
		}
		return kind.cast(found.value());
	}

	/** A finding of this rule about an element, with the severity and the source that the rule has without a band. */
	public Finding.Builder finding(Origin element) {
		return new Finding.Builder(inForce.description(), inForce.severity(), element).source(inForce.source());
	}

	/** A finding of this rule that is a warning whatever the severity of the rule, about an element. */
	public Finding.Builder warning(Origin element) {
		return new Finding.Builder(inForce.description(), Severity.WARNING, element).source(inForce.source());
	}

	/** A finding of this rule that is advice whatever the severity of the rule, about an element. */
	public Finding.Builder advice(Origin element) {
		return new Finding.Builder(inForce.description(), Severity.ADVICE, element).source(inForce.source());
	}

	/** A finding of this rule about an element, with the limit, the severity and the source of a band. */
	public Finding.Builder finding(Origin element, Band band) {
		return new Finding.Builder(inForce.description(), band.severity(), element).source(band.source()).value("limit", band.limit());
	}
}
