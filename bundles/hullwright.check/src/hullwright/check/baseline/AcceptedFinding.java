/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.baseline;

import hullwright.rules.Finding;
import hullwright.rules.Severity;
import java.util.Comparator;

/**
 * A finding that a baseline accepts. Rule, element and key are its identity; severity and distance say how bad it was.
 *
 * @param rule the id of the rule
 * @param element the qualified name of the element
 * @param key what tells it from other findings of the rule about the element; often empty
 * @param severity how much it weighed
 * @param beyondLimit how far the measured value was from its limit, as a part of the limit; 0 where nothing is measured
 */
public record AcceptedFinding(String rule, String element, String key, Severity severity, double beyondLimit) implements Comparable<AcceptedFinding> {

	private static final Comparator<AcceptedFinding> ORDER = Comparator.comparing(AcceptedFinding::rule).thenComparing(AcceptedFinding::element)
			.thenComparing(AcceptedFinding::key).thenComparing(AcceptedFinding::severity).thenComparing(AcceptedFinding::beyondLimit);

	/** A finding as a baseline keeps it. */
	public static AcceptedFinding of(Finding finding) {
		return new AcceptedFinding(finding.rule(), finding.element(), finding.key(), finding.severity(), finding.distanceFromLimit());
	}

	/** Whether a finding is about the same matter, however bad it is. */
	boolean isSameMatter(Finding finding) {
		return rule.equals(finding.rule()) && element.equals(finding.element()) && key.equals(finding.key());
	}

	boolean isSameMatter(AcceptedFinding other) {
		return rule.equals(other.rule) && element.equals(other.element) && key.equals(other.key);
	}

	/** Whether a finding about the same matter is no worse, but for a tolerance. */
	boolean covers(Finding finding, double tolerance) {
		int weight = finding.severity().compareTo(severity);
		return weight < 0 || weight == 0 && finding.distanceFromLimit() <= beyondLimit + tolerance;
	}

	@Override
	public int compareTo(AcceptedFinding other) {
		return ORDER.compare(this, other);
	}
}
