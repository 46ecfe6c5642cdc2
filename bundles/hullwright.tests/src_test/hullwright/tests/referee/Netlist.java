/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * A direct-current circuit as ngspice reads it: elements between named nodes, and what to read of the answer. Node "0" is the
 * zero of potential.
 */
final class Netlist {

	/** The zero of potential. */
	static final String ZERO = "0";

	/** What a source's voltage may differ from its value in an answer, in V. */
	private static final double SOUND = 1e-8;

	/** What an element is; the letter is that of a line of a netlist. */
	enum Kind {
		RESISTOR('R'), LOAD_RESISTOR('R'), SOURCE('V'), LOAD_CURRENT('I'), LOAD_POWER('B'), CONVERTER_INPUT('B');

		final char letter;

		Kind(char letter) {
			this.letter = letter;
		}

		/** Whether it holds two nodes together, as wires and sources do and loads do not. */
		boolean conducts() {
			return this == RESISTOR || this == SOURCE;
		}
	}

	/**
	 * One element.
	 *
	 * @param value ohms, V, A or W; of a converter's input the reciprocal of its efficiency
	 * @param output of a converter's input the label of the source at its output, else empty
	 * @param floor the voltage below which constant power becomes constant current. It is half of what there is without load, so
	 *        that ngspice starts near the upper of the two solutions, which is never below. (A {@code .nodeset} would say the
	 *        same, but ngspice 39 keeps the order of elimination that suits it, and then answers wrongly by volts.)
	 */
	record Element(Kind kind, String label, String plus, String minus, double value, String output, double floor) {

		Element with(double changed) {
			return new Element(kind, label, plus, minus, changed, output, floor);
		}
	}

	/** What to read: a voltage between two nodes, or the current through a source from its plus to its minus, divided by a number; without its sign if so wanted. */
	private record Reading(String plus, String minus, String source, double divisor, boolean unsigned) {
	}

	/** The elements by label. */
	private final Map<String, Element> elements = new LinkedHashMap<>();
	private final Map<String, Reading> readings = new LinkedHashMap<>();
	private final Map<String, String> merged = new HashMap<>();
	private final String title;

	Netlist(String title) {
		this.title = title;
	}

	/** The same circuit with another value of one element: a planted error. */
	Netlist with(String label, double value) {
		Netlist changed = new Netlist(title);
		changed.elements.putAll(elements);
		changed.elements.put(label, elements.get(label).with(value));
		changed.readings.putAll(readings);
		changed.merged.putAll(merged);
		return changed;
	}

	/** The resistors of wires and contacts in which more than some volts are lost. */
	List<Element> lostMoreThan(double volts, Map<String, Double> answer) {
		return elements.values().stream().filter(element -> element.kind() == Kind.RESISTOR)
				.filter(element -> knows(answer, element.plus()) && knows(answer, element.minus()))
				.filter(element -> Math.abs(across(answer, element)) > volts).toList();
	}

	private double across(Map<String, Double> answer, Element element) {
		return volts(answer, element.plus()) - volts(answer, element.minus());
	}

	/** Makes two nodes one. */
	void join(String one, String other) {
		String a = node(one);
		String b = node(other);
		if (!a.equals(b)) {
			// the zero keeps its name
			merged.put(b.equals(ZERO) ? a : b, b.equals(ZERO) ? b : a);
		}
	}

	/** The name of a node after all joining. */
	private String node(String name) {
		String into = merged.get(name);
		if (into == null) {
			return name;
		}
		String last = node(into);
		merged.put(name, last);
		return last;
	}

	/** A resistance; without any, the two nodes are one. */
	void resistor(String label, String plus, String minus, double ohms) {
		if (ohms == 0) {
			join(plus, minus);
		} else {
			add(Kind.RESISTOR, label, plus, minus, ohms);
		}
	}

	void source(String label, String plus, String minus, double volts) {
		add(Kind.SOURCE, label, plus, minus, volts);
	}

	void add(Kind kind, String label, String plus, String minus, double value) {
		add(new Element(kind, label, plus, minus, value, "", 0));
	}

	/** @param volts what is there without load */
	void constantPower(String label, String plus, String minus, double watts, double volts) {
		add(new Element(Kind.LOAD_POWER, label, plus, minus, watts, "", volts / 2));
	}

	/** The input of a converter: constant power, that of its output divided by the efficiency. */
	void converterInput(String label, String plus, String minus, double efficiency, String output, double volts) {
		add(new Element(Kind.CONVERTER_INPUT, label, plus, minus, 1 / efficiency, output, volts / 2));
	}

	private void add(Element element) {
		if (elements.put(element.label(), element) != null) {
			throw new IllegalStateException("two elements are called " + element.label());
		}
	}

	void readVoltage(String what, String plus, String minus) {
		readings.put(what, new Reading(plus, minus, "", 1, false));
	}

	/** The current from one node to another through a resistance. */
	void readCurrent(String what, String plus, String minus, double ohms) {
		readings.put(what, new Reading(plus, minus, "", ohms, false));
	}

	/** The current that goes through a source from its plus to its minus. */
	void readThrough(String what, String source) {
		readings.put(what, new Reading("", "", source, 1, false));
	}

	/** The current through a source, whichever way it goes. */
	void readSize(String what, String source) {
		readings.put(what, new Reading("", "", source, 1, true));
	}

	/** The current that a source gives at its plus. */
	void readGiven(String what, String source) {
		readings.put(what, new Reading("", "", source, -1, false));
	}

	/** The nodes that wires and sources hold together with a node. */
	Set<String> heldTogetherWith(String from) {
		Map<String, List<String>> neighbours = new HashMap<>();
		elements.values().stream().filter(element -> element.kind().conducts()).forEach(element -> {
			neighbours.computeIfAbsent(node(element.plus()), key -> new ArrayList<>()).add(node(element.minus()));
			neighbours.computeIfAbsent(node(element.minus()), key -> new ArrayList<>()).add(node(element.plus()));
		});
		Set<String> reached = new HashSet<>(Set.of(node(from)));
		List<String> open = new ArrayList<>(reached);
		while (!open.isEmpty()) {
			for (String next : neighbours.getOrDefault(open.remove(open.size() - 1), List.of())) {
				if (reached.add(next)) {
					open.add(next);
				}
			}
		}
		return reached;
	}

	boolean isHeldTogether(String one, String other) {
		return heldTogetherWith(one).contains(node(other));
	}

	/** The netlist. What no wire joins to the zero of potential is left out; no load may hang there. */
	String text() {
		Set<String> live = heldTogetherWith(ZERO);
		StringBuilder text = new StringBuilder("* ").append(title).append('\n');
		for (Element element : elements.values()) {
			boolean isLive = live.contains(node(element.plus())) && live.contains(node(element.minus()));
			if (isLive) {
				text.append(line(element)).append('\n');
			} else if (!element.kind().conducts()) {
				throw new IllegalStateException("nothing feeds " + element.label() + " of the " + title);
			}
		}
		return text.append(".options reltol=1e-9 abstol=1e-9 vntol=1e-10 itl1=1000\n.end\n").toString();
	}

	private String line(Element element) {
		String start = element.kind().letter + spell(element.label()) + " " + spelt(element.plus()) + " " + spelt(element.minus()) + " ";
		return start + switch (element.kind()) {
		case RESISTOR, LOAD_RESISTOR, SOURCE, LOAD_CURRENT -> element.value();
		case LOAD_POWER -> "I=" + element.value() + "/max(" + across(element) + "," + element.floor() + ")";
		case CONVERTER_INPUT -> {
			Element output = elements.get(element.output());
			yield "I=-i(V" + spell(output.label()) + ")*" + output.value() + "*" + element.value() + "/max(" + across(element) + "," + element.floor() + ")";
		}
		};
	}

	private String across(Element element) {
		return "v(" + spelt(element.plus()) + "," + spelt(element.minus()) + ")";
	}

	private String spelt(String node) {
		return spell(node(node));
	}

	/** A name as ngspice reads it: it knows no upper case. */
	private static String spell(String name) {
		return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "_");
	}

	/**
	 * What was to be read, from the answer of ngspice.
	 *
	 * @param answer voltages as {@code v(node)} in V and currents as {@code i(source)} in A
	 * @return by what was asked for; what is on a conductor that nothing feeds is absent
	 */
	Map<String, Double> read(Map<String, Double> answer) {
		elements.values().stream().filter(element -> element.kind() == Kind.SOURCE || element.floor() > 0)
				.filter(element -> knows(answer, element.plus()) && knows(answer, element.minus())).forEach(element -> check(answer, element));
		Map<String, Double> values = new LinkedHashMap<>();
		readings.forEach((what, reading) -> {
			if (!reading.source().isEmpty()) {
				double current = value(answer, "i(v" + spell(reading.source()) + ")") / reading.divisor();
				values.put(what, reading.unsigned() ? Math.abs(current) : current);
			} else if (knows(answer, reading.plus()) && knows(answer, reading.minus())) {
				values.put(what, (volts(answer, reading.plus()) - volts(answer, reading.minus())) / reading.divisor());
			}
		});
		return values;
	}

	/** That a source has its voltage, and that a load of constant power is not below its floor. */
	private void check(Map<String, Double> answer, Element element) {
		double across = across(answer, element);
		if (element.floor() > 0 ? across <= element.floor() : Math.abs(across - element.value()) > SOUND) {
			throw new IllegalStateException("the answer of ngspice is unsound: " + across + " V across " + element);
		}
	}

	private boolean knows(Map<String, Double> answer, String node) {
		return node(node).equals(ZERO) || answer.containsKey("v(" + spelt(node) + ")");
	}

	private double volts(Map<String, Double> answer, String node) {
		return node(node).equals(ZERO) ? 0 : value(answer, "v(" + spelt(node) + ")");
	}

	private static double value(Map<String, Double> answer, String name) {
		Double value = answer.get(name);
		if (value == null) {
			throw new IllegalStateException("ngspice says nothing of " + name);
		}
		return value;
	}
}
