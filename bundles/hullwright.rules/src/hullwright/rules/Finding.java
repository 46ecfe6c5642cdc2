/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import hullwright.network.Origin;
import hullwright.quantity.ScalarQuantity;
import hullwright.rules.edit.Fix;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Something that a rule found, as data.
 *
 * @param rule the id of the rule
 * @param severity how much it weighs
 * @param origin the element it is about, and its place in the text
 * @param key what tells two findings of the rule about one element apart; empty if there can be one only
 * @param template the text of the finding, with the names of its values in braces
 * @param values the named values, in the order in which the rule gave them: quantities, whole numbers or names
 * @param source where the limit or the requirement was read, empty for a problem of the text itself
 * @param fixes what could be done about it
 * @param covers the qualified names of other elements that it speaks for: those that a rule which it silences says nothing of
 */
public record Finding(String rule, Severity severity, Origin origin, String key, String template, Map<String, Object> values,
		String source, List<Fix> fixes, Set<String> covers) {

	public Finding {
		values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
		fixes = List.copyOf(fixes);
		covers = Set.copyOf(covers);
	}

	/** A problem of the text itself: the message says it all. */
	public static Finding ofText(String rule, Severity severity, Origin origin, String message, List<Fix> fixes) {
		return new Finding(rule, severity, origin, message, "{message}", Map.of("message", message), "", fixes, Set.of());
	}

	/**
	 * How far the measured value is from its limit, as a fraction of the limit: what makes one of two findings of a rule the
	 * worse. Zero where there is no limit or nothing measured of its kind.
	 */
	public double distanceFromLimit() {
		if (!(values.get("limit") instanceof ScalarQuantity<?> limit) || limit.si() == 0) {
			return 0;
		}
		return values.entrySet().stream()
				.filter(entry -> !entry.getKey().equals("limit"))
				.map(Map.Entry::getValue)
				.filter(value -> value.getClass() == limit.getClass())
				.findFirst()
				.map(measured -> Math.abs(((ScalarQuantity<?>) measured).si() - limit.si()) / Math.abs(limit.si()))
				.orElse(0.0);
	}

	/** Whether it is about an element, or speaks for it. */
	public boolean isAbout(String element) {
		return element().equals(element) || covers.contains(element);
	}

	/** Whether the other says the same of the same element, however bad it is and whatever was measured. */
	public boolean isSameMatter(Finding other) {
		return rule.equals(other.rule) && element().equals(other.element()) && key.equals(other.key);
	}

	/** The qualified name of the element. */
	public String element() {
		return origin.element();
	}

	/** The text of the finding, for people. */
	public String message() {
		StringBuilder text = new StringBuilder(template);
		values.forEach((name, value) -> {
			String placeholder = "{" + name + "}";
			for (int at = text.indexOf(placeholder); at >= 0; at = text.indexOf(placeholder, at + value.toString().length())) {
				text.replace(at, at + placeholder.length(), value.toString());
			}
		});
		return text.toString();
	}

	/** Collects what a rule has to say. */
	public static final class Builder {

		private final RuleDescription rule;
		private final Severity severity;
		private final Origin origin;
		private final Map<String, Object> values = new LinkedHashMap<>();
		private final List<Fix> fixes = new ArrayList<>();
		private final Set<String> covers = new LinkedHashSet<>();
		private String key = "";
		private String source = "";

		Builder(RuleDescription rule, Severity severity, Origin origin) {
			this.rule = rule;
			this.severity = severity;
			this.origin = origin;
		}

		/** A value that the message names: a quantity, a whole number or a name. */
		public Builder value(String name, Object value) {
			values.put(name, value);
			return this;
		}

		/** What tells this finding from others of the rule about the same element; never a measured value. */
		public Builder key(String identity) {
			key = identity;
			return this;
		}

		/** Where the limit was read, if it differs from what the rule declares. */
		public Builder source(String where) {
			source = where;
			return this;
		}

		/** Something that could be done about it. */
		public Builder fix(Fix fix) {
			fixes.add(fix);
			return this;
		}

		/** Other elements that it speaks for, by their qualified names: the devices of a section without supply. */
		public Builder covers(Collection<String> elements) {
			covers.addAll(elements);
			return this;
		}

		/** The finding. */
		public Finding build() {
			return new Finding(rule.id(), severity, origin, key, rule.message(), values, source, fixes, covers);
		}
	}
}
