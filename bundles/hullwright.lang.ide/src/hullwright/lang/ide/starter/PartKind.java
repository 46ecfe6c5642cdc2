/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.starter;

import java.util.List;
import java.util.Map;

/**
 * The kinds of parts that a catalog can hold, each with the values without which it says too little.
 */
public enum PartKind {

	/** Something that tells, shows or steers. */
	DEVICE("Device", List.of(Value.of("load", "Draws from the network", "1 LEN"), Value.of("lowest", "Lowest voltage", "9 V"),
			Value.of("highest", "Highest voltage", "16 V")), """
			device %name {
				port bus : %family male
				supply %lowest .. %highest
				load %load
			"""),
	/** Cable by stock lengths. */
	CABLE("Cable", List.of(Value.of("power", "Power conductors", "22 AWG"), Value.of("signal", "Signal conductors", "24 AWG"),
			Value.of("rated", "Rated current", "3 A"), Value.of("stock", "Stock lengths", "1 m, 2 m, 5 m")), """
			cable %name {
				ends %family male, %family female
				power %power
				signal %signal
				rated %rated
				stock %stock
			"""),
	/** The end of a backbone. */
	TERMINATOR("Terminator", List.of(Value.choice("gender", "Pins or sockets", List.of("male", "female"))), """
			terminator %name {
				end %family %gender
				120 ohm
			"""),
	/** A tee or a block. */
	TEE("Tee or block", List.of(Value.of("ports", "Number of ports", "4")), """
			tee %name {
				backbone %family male, %family female
				ports 1..%ports : %family female
			"""),
	/** Where the power comes in. */
	TAP("Power tap", List.of(Value.of("fuse", "Fuse of each side", "3 A")), """
			tap %name {
				backbone %family male, %family female
				feeds both sides
				fuse each side %fuse
			"""),
	/** From one family of connectors to another. */
	ADAPTER("Adapter", List.of(Value.choice("other", "To the connectors", List.of(Value.FAMILIES)), Value.of("rated", "Rated current", "3 A")), """
			adapter %name {
				%family male to %other female
				carries power
				rated %rated
			"""),
	/** Through a bulkhead. */
	FEEDTHROUGH("Bulkhead feed-through", List.of(), """
			feedthrough %name {
				%family male to %family female
				watertight
			"""),
	/** Closes a spare port. */
	CAP("Cap for a spare port", List.of(), """
			cap %name {
				end %family male
			"""),
	/** Feeds a small network through a port. */
	CORD("Supply cord", List.of(Value.of("length", "Length", "1 m"), Value.of("power", "Conductors", "18 AWG"), Value.of("fuse", "Fuse", "3 A")), """
			cord %name {
				%family male to bare
				length %length
				power %power
				fuse %fuse
			"""),
	/** A kind of fuse or breaker. */
	FUSE("Fuse or breaker", List.of(Value.of("rated", "Ratings", "1 A, 2 A, 3 A"), Value.of("times", "Opens at so many times its rating", "1.35"),
			Value.of("within", "Within", "10 min")), """
			fuse %name {
				rated %rated
				opens at %times times rated within %within
			""");

	private final String label;
	private final List<Value> values;
	private final String template;

	PartKind(String label, List<Value> values, String template) {
		this.label = label;
		this.values = values;
		this.template = template;
	}

	/**
	 * A value that a person states.
	 *
	 * @param key its name in a map of values
	 * @param label what it is, for people
	 * @param usual what stands there at first
	 * @param choices what it can be; empty where it is written freely
	 */
	public record Value(String key, String label, String usual, List<String> choices) {

		/** Stands in choices for the connector families that can be named. */
		public static final String FAMILIES = "*families";

		public Value {
			choices = List.copyOf(choices);
		}

		static Value of(String key, String label, String usual) {
			return new Value(key, label, usual, List.of());
		}

		static Value choice(String key, String label, List<String> choices) {
			return new Value(key, label, choices.get(0), choices);
		}
	}

	/** For people. */
	public String label() {
		return label;
	}

	/** What a person states of it. */
	public List<Value> asked() {
		return values;
	}

	/** Whether it has connectors. */
	public boolean hasConnectors() {
		return template.contains("%family");
	}

	/** Its text up to where every part says how it is bought. */
	String filled(String head, String family, Map<String, String> stated) {
		String text = template.replace("%name", head).replace("%family", family);
		for (Value value : values) {
			text = text.replace("%" + value.key(), stated.getOrDefault(value.key(), value.usual()).strip());
		}
		return text;
	}
}
