/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Origin;
import hullwright.quantity.Quantity;
import hullwright.rules.Band;
import hullwright.rules.Finding;
import hullwright.rules.HouseDemands;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.RuleInForce;
import hullwright.rules.Severity;
import hullwright.spec.Profile;
import hullwright.spec.RuleSetting;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What is in force for each rule: what the rule ships with, changed by the one profile of the project.
 *
 * @param rules the rules in force, by id
 * @param demands what the house asks beside rules
 * @param problems what is wrong with the profile
 */
record ProfileInForce(Map<String, RuleInForce> rules, HouseDemands demands, List<Finding> problems) {

	/** The one profile that a profile may start from. */
	private static final String STANDARD = "standard";

	static ProfileInForce of(ReadProject project, ProjectRules rules) {
		Map<String, RuleInForce> inForce = new LinkedHashMap<>();
		rules.rules().rules().forEach(rule -> inForce.put(rule.description().id(), RuleInForce.asShipped(rule.description())));
		List<Finding> problems = new ArrayList<>();
		List<Profile> profiles = project.files().values().stream()
				.flatMap(file -> file.getDeclarations().stream())
				.filter(Profile.class::isInstance)
				.map(Profile.class::cast)
				.toList();
		TextOrigins places = new TextOrigins();
		profiles.stream().skip(1).forEach(surplus -> problems.add(problem(ProjectProblem.TWO_PROFILES, places.of(surplus, surplus.getName()),
				"a project has one profile, and '" + profiles.get(0).getName() + "' in " + places.of(profiles.get(0), "").file() + " is it")));
		if (profiles.isEmpty()) {
			return new ProfileInForce(inForce, HouseDemands.NONE, problems);
		}
		apply(profiles.get(0), rules, inForce, problems, places);
		return new ProfileInForce(inForce, new DemandsOfProfile(profiles.get(0), places).read(problems), problems);
	}

	private static void apply(Profile profile, ProjectRules rules, Map<String, RuleInForce> inForce, List<Finding> problems, TextOrigins places) {
		if (!STANDARD.equals(profile.getBase())) {
			problems.add(problem(ProjectProblem.PROFILE_SETTING_WRONG, places.of(profile, profile.getName()),
					"a profile starts from 'standard'; there is no profile '" + profile.getBase() + "'"));
		}
		for (RuleSetting setting : profile.getSettings()) {
			Origin place = places.of(setting, String.valueOf(setting.getRule()));
			RuleInForce shipped = inForce.get(setting.getRule());
			if (shipped == null && !rules.lacks(setting.getRule())) {
				continue;
			}
			if (shipped == null) {
				problems.add(problem(ProjectProblem.PROFILE_SETTING_WRONG, place, "there is no rule '" + setting.getRule() + "'"));
			} else {
				String source = "profile " + profile.getName() + ", " + place.file() + " line " + place.line();
				inForce.put(setting.getRule(), changed(shipped, setting, source, places, problems));
			}
		}
	}

	private static RuleInForce changed(RuleInForce shipped, RuleSetting setting, String source, TextOrigins places, List<Finding> problems) {
		RuleDescription rule = shipped.description();
		if (setting.isOff()) {
			return new RuleInForce(rule, false, shipped.severity(), shipped.bands(), source, shipped.parameters());
		}
		Origin place = places.of(setting, rule.id());
		Map<String, RuleInForce.ParameterInForce> parameters = parameters(shipped, setting, source, places, problems);
		RuleInForce unlimited = new RuleInForce(rule, true, shipped.severity(), shipped.bands(), source, parameters);
		List<Band> bands = new ArrayList<>();
		for (hullwright.spec.Band band : setting.getBands()) {
			Quantity limit = band.getAbove();
			Severity severity = Severity.valueOf(band.getSeverity().getName().toUpperCase(Locale.ROOT));
			if (limit == null && rule.limitDimension().isEmpty()) {
				return new RuleInForce(rule, true, severity, shipped.bands(), source, parameters);
			}
			if (limit == null) {
				problems.add(problem(ProjectProblem.PROFILE_SETTING_WRONG, place, rule.id() + " has limits, each with its severity: write "
						+ "'{ " + band.getSeverity() + " above " + rule.limitDimension().get().example() + " }'"));
				return unlimited;
			}
			if (rule.limitDimension().filter(limit.dimension()::equals).isEmpty()) {
				problems.add(problem(ProjectProblem.PROFILE_SETTING_WRONG, place, rule.limitDimension()
						.map(expected -> rule.id() + " has limits of " + expected.label() + ", such as '" + expected.example() + "', not '" + limit + "'")
						.orElse(rule.id() + " has no limits to set; it can be switched off")));
				return unlimited;
			}
			bands.add(new Band(severity, limit, source));
		}
		return new RuleInForce(rule, true, shipped.severity(), bands.isEmpty() ? shipped.bands() : bands, source, parameters);
	}

	private static Map<String, RuleInForce.ParameterInForce> parameters(RuleInForce shipped, RuleSetting setting, String source, TextOrigins places,
			List<Finding> problems) {
		Map<String, RuleInForce.ParameterInForce> parameters = new LinkedHashMap<>(shipped.parameters());
		for (hullwright.spec.Parameter each : setting.getParameters()) {
			Optional<Parameter> declared = shipped.description().parameters().stream().filter(one -> one.name().equals(each.getName())).findFirst();
			String rule = shipped.description().id();
			Origin place = places.of(each, rule);
			if (declared.isEmpty()) {
				String known = shipped.description().parameters().stream().map(Parameter::name).collect(Collectors.joining(", "));
				problems.add(problem(ProjectProblem.PROFILE_SETTING_WRONG, place, "'" + each.getName() + "' is no value that " + rule + " works with"
						+ (known.isEmpty() ? "" : "; it has " + known)));
			} else if (!declared.get().takes(counted(each.getValue()))) {
				problems.add(problem(ProjectProblem.PROFILE_SETTING_WRONG, place,
						"'" + each.getName() + "' of " + rule + " is " + declared.get().example() + ", not '" + each.getValue() + "'"));
			} else {
				parameters.put(each.getName(), new RuleInForce.ParameterInForce(counted(each.getValue()), source));
			}
		}
		return parameters;
	}

	/** A number without a unit counts something, if it is whole. */
	private static Object counted(Object value) {
		return value instanceof Number number && number.doubleValue() == number.intValue() ? Integer.valueOf(number.intValue()) : value;
	}

	private static Finding problem(String rule, Origin place, String message) {
		return Finding.ofText(rule, Severity.ERROR, place, message, List.of());
	}
}
