/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.analysis.data.WantedData.Verdict;
import hullwright.network.FittedDevice;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Wanting;
import hullwright.quantity.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
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
	private final Reception reception;
	private final MissingMaps maps;
	private final Set<DataProblem> problems;
	private final List<MissingMap> missing = new ArrayList<>();

	Wants(Listening listening, DataPaths paths, StreamSources sources, Reception reception, MissingMaps maps, Set<DataProblem> problems) {
		this.listening = listening;
		this.paths = paths;
		this.sources = sources;
		this.reception = reception;
		this.maps = maps;
		this.problems = problems;
	}

	WantedData of(FittedDevice device, Wanting wanting) {
		Set<Stream> heard = new LinkedHashSet<>();
		wanting.uses().forEach(use -> heard.addAll(listening.heard(device, use, wanting.port())));
		List<Stream> taken = heard.stream().filter(each -> reception.mayTake(device, each)).toList();
		List<DataPath> ways = ways(device, taken);
		boolean tellsItself = device.sends().stream().anyMatch(sent -> wanting.uses().stream().anyMatch(use -> use.covers(sent.use())));
		Verdict verdict;
		List<DataSource> elsewhere = List.of();
		if (!ways.isEmpty()) {
			verdict = verdict(ways, wanting);
			verdict = verdict == Verdict.TOO_SLOW && tellsItself ? Verdict.OWN : verdict;
		} else if (tellsItself) {
			verdict = Verdict.OWN;
		} else {
			elsewhere = elsewhere(device, wanting);
			verdict = !heard.isEmpty() && taken.isEmpty() ? Verdict.TAKEN_SOURCE_SILENT
					: elsewhere.isEmpty() ? Verdict.NO_SOURCE : Verdict.NOT_REACHED;
			if (verdict == Verdict.NO_SOURCE) {
				List<Stream> obsolete = wanting.uses().stream().flatMap(use -> listening.obsolete(device, use, wanting.port()).stream()).toList();
				Optional<MissingMaps.Gap> gap = obsolete.isEmpty() ? maps.of(device, wanting) : Optional.empty();
				if (!obsolete.isEmpty()) {
					verdict = Verdict.ONLY_OBSOLETE;
					elsewhere = from(obsolete);
				} else if (gap.isPresent()) {
					verdict = Verdict.NOT_TURNED;
					elsewhere = from(gap.get().heard());
					missing.add(gap.get().map());
				}
			}
		}
		return new WantedData(device.name(), wanting, ways, reception.received(device, List.copyOf(heard)), verdict, elsewhere);
	}

	/** The maps that gateways would need for what devices want, as far as they were asked for. */
	List<MissingMap> missing() {
		return missing;
	}

	private List<DataPath> ways(FittedDevice device, List<Stream> taken) {
		List<DataPath> ways = new ArrayList<>();
		boolean complete = true;
		for (Stream stream : taken) {
			DataPaths.Found found = paths.to(stream, device);
			found.paths().stream().filter(each -> !each.source().device().equals(device.name())).forEach(ways::add);
			complete &= found.complete();
		}
		if (!complete || ways.size() > DataPaths.MOST) {
			problems.add(new DataProblem.TooManyWays(device.name()));
		}
		return ways.size() > DataPaths.MOST ? ways.subList(0, DataPaths.MOST) : ways;
	}

	private List<DataSource> from(List<Stream> streams) {
		return streams.stream().flatMap(stream -> sources.of(stream).stream()).distinct().toList();
	}

	private List<DataSource> elsewhere(FittedDevice device, Wanting wanting) {
		return wanting.uses().stream().flatMap(use -> listening.anywhere(use).stream()).flatMap(stream -> sources.of(stream).stream())
				.filter(each -> !each.device().equals(device.name())).distinct().toList();
	}

	private static Verdict verdict(List<DataPath> ways, Wanting wanting) {
		if (wanting.atLeastEvery().isEmpty()) {
			return Verdict.MET;
		}
		boolean untimed = false;
		for (DataPath each : ways) {
			Optional<Duration> comes = each.timing().every().filter(every -> every.seconds() > 0);
			if (comes.isPresent() && comes.get().seconds() <= wanting.atLeastEvery().get().seconds() * ROUNDING) {
				return Verdict.MET;
			}
			untimed |= comes.isEmpty();
		}
		return untimed ? Verdict.UNTIMED : Verdict.TOO_SLOW;
	}
}
