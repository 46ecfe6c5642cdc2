/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Origin;
import hullwright.rules.Demand;
import hullwright.rules.Finding;
import hullwright.rules.HouseDemands;
import hullwright.rules.Severity;
import hullwright.spec.Catalog;
import hullwright.spec.Profile;
import hullwright.spec.Requirement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a profile demands beside the settings of rules, and what it demands in vain.
 */
final class DemandsOfProfile {

	private final Profile profile;
	private final TextOrigins places;

	DemandsOfProfile(Profile profile, TextOrigins places) {
		this.profile = profile;
		this.places = places;
	}

	/** The demands that can be met; the others are problems. */
	HouseDemands read(List<Finding> problems) {
		List<Demand> demands = new ArrayList<>();
		for (Requirement requirement : profile.getRequirements()) {
			Origin place = places.of(requirement, profile.getName());
			Optional<Demand> demand = one(requirement.getWhat(), requirement.getOn(), source(place));
			demand.ifPresentOrElse(demands::add, () -> problems.add(Finding.ofText(ProjectProblem.PROFILE_SETTING_WRONG, Severity.ERROR, place,
					"'" + requirement.getWhat() + " on every " + requirement.getOn() + "' cannot be required; what can be is " + choices(), List.of())));
		}
		return new HouseDemands(demands, approved());
	}

	private static Optional<Demand> one(String what, String on, String source) {
		return pairs().filter(pair -> word(pair.what()).equals(what) && word(pair.on()).equals(on)).findFirst()
				.map(pair -> new Demand(pair.what(), pair.on(), source));
	}

	private static Stream<Demand> pairs() {
		return Arrays.stream(Demand.What.values()).flatMap(what -> Arrays.stream(Demand.On.values())
				.filter(on -> on.takes(what)).map(on -> new Demand(what, on, "")));
	}

	private static String choices() {
		return pairs().map(pair -> word(pair.what()) + " on every " + word(pair.on())).collect(Collectors.joining(", "));
	}

	private static String word(Enum<?> of) {
		return of.name().toLowerCase(Locale.ROOT);
	}

	private Optional<HouseDemands.ApprovedCatalogs> approved() {
		Set<String> names = new LinkedHashSet<>();
		// a catalog that the text does not name right has no name here; the language tells of it
		profile.getApproved().stream().map(Catalog::getName).filter(Objects::nonNull).forEach(names::add);
		return names.isEmpty() ? Optional.empty() : Optional.of(new HouseDemands.ApprovedCatalogs(names, source(places.of(profile, profile.getName()))));
	}

	private String source(Origin place) {
		return "profile " + profile.getName() + ", " + place.file() + " line " + place.line();
	}
}
