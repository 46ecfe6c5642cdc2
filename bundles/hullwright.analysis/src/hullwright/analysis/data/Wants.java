/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.FittedDevice;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Taking;
import hullwright.network.data.Wanting;
import hullwright.quantity.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Holds what devices want against what they hear.
 */
final class Wants {

	/** By how little an interval may be longer than wanted and still be the same, for rounding. */
	private static final double ROUNDING = 1 + 1e-9;

	private final Listening listening;
	private final DataPaths paths;
	private final StreamSources sources;
	private final Set<DataProblem> problems;

	Wants(Listening listening, DataPaths paths, StreamSources sources, Set<DataProblem> problems) {
		this.listening = listening;
		this.paths = paths;
		this.sources = sources;
		this.problems = problems;
	}

	WantedData of(FittedDevice device, Wanting wanting) {
		List<DataPath> ways = new ArrayList<>();
		boolean silent = false;
		for (MessageUse use : wanting.uses()) {
			Optional<String> taken = device.settings().takes().stream().filter(each -> use.covers(each.use())).map(Taking::device).findFirst();
			for (Stream stream : listening.heard(device, use, wanting.port())) {
				for (DataPath path : paths.to(stream)) {
					boolean own = path.source().device().equals(device.name());
					if (!own && taken.map(path.source().device()::equals).orElse(true)) {
						ways.add(path);
					}
				}
			}
			silent |= taken.isPresent() && ways.isEmpty();
		}
		if (ways.size() > DataPaths.MOST) {
			problems.add(new DataProblem.TooManyWays(device.name()));
			ways = ways.subList(0, DataPaths.MOST);
		}
		boolean tellsItself = device.sends().stream().anyMatch(sent -> wanting.uses().stream().anyMatch(use -> use.covers(sent.use())));
		if (!ways.isEmpty()) {
			boolean inTime = ways.stream().anyMatch(each -> isOftenEnough(each, wanting));
			return new WantedData(device.name(), wanting, ways, inTime ? WantedData.Verdict.MET : tellsItself ? WantedData.Verdict.OWN
					: WantedData.Verdict.TOO_SLOW, List.of());
		} else if (tellsItself) {
			return new WantedData(device.name(), wanting, ways, WantedData.Verdict.OWN, List.of());
		}
		List<DataSource> elsewhere = wanting.uses().stream().flatMap(use -> listening.anywhere(use).stream())
				.flatMap(stream -> sources.of(stream).stream()).filter(each -> !each.device().equals(device.name())).distinct().toList();
		return new WantedData(device.name(), wanting, ways, silent ? WantedData.Verdict.TAKEN_SOURCE_SILENT
				: elsewhere.isEmpty() ? WantedData.Verdict.NO_SOURCE : WantedData.Verdict.NOT_REACHED, elsewhere);
	}

	/** What no text says how often it comes, or comes on events, is not called too slow. */
	private static boolean isOftenEnough(DataPath path, Wanting wanting) {
		Optional<Duration> comes = path.timing().every();
		return wanting.atLeastEvery().isEmpty() || comes.isEmpty() || comes.get().seconds() <= wanting.atLeastEvery().get().seconds() * ROUNDING;
	}
}
