/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import java.util.ArrayList;
import java.util.List;

import hullwright.network.Origin;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.spec.Declaration;
import hullwright.spec.Profile;
import hullwright.spec.SpecFile;

/**
 * What a text says and nothing acts on yet. It is told, so that nobody relies on it.
 */
final class NotInForce {

	private final TextOrigins places = new TextOrigins();
	private final List<Finding> findings = new ArrayList<>();

	private NotInForce() {
	}

	/** The findings of a file, each as advice. */
	static List<Finding> in(SpecFile file) {
		NotInForce texts = new NotInForce();
		for (Declaration declaration : file.getDeclarations()) {
			if (declaration instanceof Profile profile) {
				texts.inProfile(profile);
			}
		}
		return texts.findings;
	}

	private void inProfile(Profile profile) {
		profile.getRequirements().forEach(requirement -> add(places.of(requirement, profile.getName()),
				"'require' is not applied yet: nothing checks each " + requirement.getOn() + " for a " + requirement.getWhat()));
		if (!profile.getApproved().isEmpty()) {
			add(places.of(profile, profile.getName()), "'approved catalogs' is not applied yet: parts of other catalogs are not told");
		}
	}

	private void add(Origin place, String message) {
		findings.add(Finding.ofText(ProjectProblem.NOT_IN_FORCE, Severity.ADVICE, place, message, List.of()));
	}
}
