/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.baseline;

import hullwright.rules.Finding;
import hullwright.rules.report.BaselineUsed;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The findings that are accepted. One that is no worse than there does not count; one that is worse does.
 */
public final class Baseline {

	/** By which part of its limit a finding may move further from it and still be no worse, where nobody says otherwise. */
	public static final double USUAL_TOLERANCE = 0.01;

	private final BaselineUsed use;
	private final List<AcceptedFinding> accepted;
	private final Map<String, List<AcceptedFinding>> byElement = new HashMap<>();

	/**
	 * A baseline.
	 *
	 * @param file where it was read, for people
	 * @param sha256 the SHA-256 of its bytes, in hexadecimal
	 * @param tolerance by which part of its limit a finding may move further from it; zero or more
	 */
	Baseline(String file, String sha256, double tolerance, Collection<AcceptedFinding> accepted) {
		this.accepted = List.copyOf(accepted);
		use = new BaselineUsed(file, sha256, this.accepted.size(), tolerance);
		this.accepted.forEach(each -> byElement.computeIfAbsent(each.element(), none -> new ArrayList<>()).add(each));
	}

	/** What a report says of it. */
	public BaselineUsed use() {
		return use;
	}

	/** The qualified names of what it accepts findings about, one for each finding. */
	public List<String> elements() {
		return accepted.stream().map(AcceptedFinding::element).toList();
	}

	/** Whether a finding is in it and no worse than there. */
	public boolean covers(Finding finding) {
		return byElement.getOrDefault(finding.element(), List.of()).stream()
				.anyMatch(each -> each.isSameMatter(finding) && each.covers(finding, use.tolerance()));
	}

	/** What it accepts and none of these findings is about, however bad they are. */
	public List<AcceptedFinding> stale(Collection<Finding> findings) {
		return accepted.stream().filter(each -> findings.stream().noneMatch(each::isSameMatter)).toList();
	}
}
