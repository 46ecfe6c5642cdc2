/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import hullwright.lang.scoping.NamesOnBoard;
import hullwright.spec.DataNetwork;
import hullwright.spec.Named;
import hullwright.spec.Series;
import hullwright.spec.Waiver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;

/**
 * The names within what a waiver is about. It may be derived from the names of several things: the cable bow-to-dash lies
 * between bow and dash.
 */
final class WaivedName {

	private static final Pattern WORD = Pattern.compile("[^.-]+");

	private WaivedName() {
	}

	/** The names that stand in the text, which begins at the offset. */
	static List<NameUse> in(Waiver waiver, int offset, String text) {
		Series series = EcoreUtil2.getContainerOfType(waiver, Series.class);
		List<NameUse> uses = new ArrayList<>();
		if (series == null) {
			return uses;
		}
		int point = text.indexOf('.');
		Optional<DataNetwork> network = series.getNetworks().stream()
				.filter(each -> point >= 0 && text.substring(0, point).equals(each.getName())).findFirst();
		for (Matcher word = WORD.matcher(text); word.find();) {
			boolean isNetwork = network.isPresent() && word.start() < point;
			String name = word.group();
			uses.add(new NameUse(offset + word.start(), name, false, () -> isNetwork ? network.get() : onBoard(series, network, name)));
		}
		return uses;
	}

	private static EObject onBoard(Series series, Optional<DataNetwork> network, String name) {
		Stream<Named> inNetwork = network.stream().flatMap(each -> Stream.concat(NamesOnBoard.of(each).stream(), added(series, each)));
		Stream<Named> beside = Stream.of(NamesOnBoard.besideNetworks(series, series), series.getNetworks(), series.getSources())
				.flatMap(List::stream).map(Named.class::cast);
		return Stream.concat(inNetwork, beside).filter(each -> name.equals(each.getName())).findFirst().orElse(null);
	}

	/** What the hulls add to a network. */
	private static Stream<Named> added(Series series, DataNetwork network) {
		return series.getHulls().stream().flatMap(hull -> NamesOnBoard.inNetwork(network, hull).stream());
	}
}
