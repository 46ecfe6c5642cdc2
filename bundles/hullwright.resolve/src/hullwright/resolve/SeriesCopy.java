/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.network.BoatSeries;
import hullwright.network.PartsOnOffer;
import hullwright.network.Waiver;
import hullwright.spec.Choice;
import hullwright.spec.Hull;
import hullwright.spec.Option;
import hullwright.spec.Series;
import hullwright.spec.Term;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;

/**
 * Copies out of EMF what a series offers and sells.
 */
final class SeriesCopy {

	private SeriesCopy() {
	}

	static BoatSeries of(Series series, OptionSpace space, List<Waiver> waivers, PartsOnOffer partsOnOffer, TextPlaces places) {
		Map<String, BoatSeries.Option> options = new LinkedHashMap<>();
		series.getOptions().forEach(each -> options.putIfAbsent(each.getName(), option(each, places)));
		for (Choice choice : series.getChoices()) {
			choice.getOptions().forEach(each -> options.putIfAbsent(each.getName(), oneOf(choice, option(each, places))));
		}
		return new BoatSeries(series.getName(), Copying.text(series.getTitle()), Copying.text(series.getRevision()), List.copyOf(options.values()), space.choices(),
				series.getHulls().stream().map(each -> hull(each, space, places)).toList(), conditions(series), waivers, partsOnOffer,
				places.of(series, series.getName()));
	}

	/** Of a choice each option excludes the others. */
	private static BoatSeries.Option oneOf(Choice choice, BoatSeries.Option option) {
		Set<String> excludes = new LinkedHashSet<>(option.excludes());
		choice.getOptions().stream().map(Option::getName).filter(each -> !each.equals(option.name())).forEach(excludes::add);
		return new BoatSeries.Option(option.name(), option.title(), option.requires(), excludes, option.origin());
	}

	private static BoatSeries.Option option(Option option, TextPlaces places) {
		return new BoatSeries.Option(option.getName(), Copying.text(option.getTitle()), names(option.getRequires()), names(option.getExcludes()),
				places.of(option, option.getName()));
	}

	private static BoatSeries.SoldHull hull(Hull hull, OptionSpace space, TextPlaces places) {
		Set<String> options = names(hull.getOptions());
		return new BoatSeries.SoldHull(hull.getName(), options, space.whyNot(options), places.of(hull, hull.getName()));
	}

	private static Set<String> names(List<Option> options) {
		return options.stream().map(Option::getName).collect(Collectors.toCollection(TreeSet::new));
	}

	/** The options that some condition names. */
	private static Set<String> conditions(Series series) {
		Set<String> named = new TreeSet<>();
		for (TreeIterator<EObject> contents = series.eAllContents(); contents.hasNext();) {
			if (contents.next() instanceof Term term) {
				term.eCrossReferences().stream().filter(Option.class::isInstance).forEach(each -> named.add(((Option) each).getName()));
			}
		}
		return named;
	}
}
