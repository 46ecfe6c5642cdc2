/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.data.DataFlow;
import hullwright.analysis.data.DataInstances;
import hullwright.analysis.data.DataPath;
import hullwright.analysis.data.DataSource;
import hullwright.analysis.data.DoubledData;
import hullwright.analysis.data.EchoLoop;
import hullwright.analysis.data.ReceivedData;
import hullwright.analysis.data.SeveralSources;
import hullwright.analysis.data.ToldMessage;
import hullwright.analysis.data.WantedData;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Timing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Who tells what to whom, for people: what devices need and how they come by it, then what is there twice, goes round or is not used.
 */
final class DataText {

	private final DataFlow data;
	private final Wording wording;

	DataText(DataFlow data, Wording wording) {
		this.data = data;
		this.wording = wording;
	}

	/** What devices cannot do without, those that lack it first. */
	TextTable wants() {
		TextTable table = TextTable.worstFirst("Device", "Needs", ">At least every", "Gets it from", ">Every", ">Takes at most", "");
		data.wants().stream().sorted(Comparator.comparing(WantedData::isMet)).forEach(each -> {
			List<DataPath> paths = each.paths();
			table.row(wording.name(each.device()), each.wanting().uses().stream().map(MessageUse::toString).collect(Collectors.joining(" or ")),
					each.wanting().atLeastEvery().map(Wording::time).orElse(""), from(each),
					paths.stream().findFirst().map(path -> timing(path.timing())).orElse(""),
					paths.stream().findFirst().map(DataText::delay).orElse(""), word(each));
		});
		return table;
	}

	private String from(WantedData wanted) {
		if (wanted.verdict() == WantedData.Verdict.OWN) {
			return "itself";
		}
		List<String> sources = wanted.sources().stream().map(DataSource::device).distinct().map(wording::name).toList();
		return sources.isEmpty() ? "nobody" : wording.some(sources, "");
	}

	private static String timing(Timing timing) {
		return timing.every().map(Wording::time).orElse(timing.onEvent() ? "event" : "");
	}

	private static String delay(DataPath path) {
		boolean wire = path.legs().size() == 1 && path.delay().seconds() == 0;
		return wire ? "" : Wording.time(path.delay()) + (path.unstated().isEmpty() ? "" : " *");
	}

	private String word(WantedData wanted) {
		return switch (wanted.verdict()) {
		case MET, OWN -> "";
		case UNTIMED -> "not told how often";
		case TOO_SLOW -> "too slow";
		case NO_SOURCE -> "nobody tells it";
		case ONLY_OBSOLETE -> "told by an obsolete message only";
		case NOT_TURNED -> "nobody turns into it what comes from " + wording.some(wanted.elsewhere().stream().map(DataSource::device).distinct().toList(), "");
		case NOT_REACHED -> "does not come from " + wording.some(wanted.elsewhere().stream().map(DataSource::device).distinct().toList(), "");
		case TAKEN_SOURCE_SILENT -> "the source that is set does not tell it";
		};
	}

	List<String> wantNotes() {
		return data.wants().stream().flatMap(each -> each.paths().stream().limit(1)).anyMatch(each -> !each.unstated().isEmpty())
				? List.of("* A hop, line or gateway on the way takes some time on top, which no text states or which has no bound.") : List.of();
	}

	/** What else is to be said of the data on board. */
	List<String> lines() {
		List<String> lines = new ArrayList<>();
		for (EchoLoop each : data.loops()) {
			lines.add("Goes round and multiplies: " + some(each.messages()) + ", over " + names(each.devices()) + ".");
		}
		for (DoubledData each : data.doubled()) {
			lines.add("Told twice on " + wording.name(each.carrier().name()) + ", by " + names(each.tellers()) + ": " + some(each.messages()) + ".");
		}
		for (SeveralSources each : data.shared()) {
			String what = each.use() + each.instance().map(number -> " instance " + number).orElse("") + " on " + wording.name(each.network());
			lines.add(each.sameKey() ? "Nothing tells apart who sends " + what + ": " + names(each.devices()) + "."
					: "Several sources of " + what + ": " + names(each.devices()) + "; who listens chooses.");
		}
		undecided().ifPresent(lines::add);
		passedOn().ifPresent(lines::add);
		unused().ifPresent(lines::add);
		return lines;
	}

	/** Where one of several sources is taken and nobody says which; what is told on events is taken from all. */
	private Optional<String> undecided() {
		Map<String, Set<String>> byDevice = new LinkedHashMap<>();
		data.wants().forEach(each -> each.received().forEach(one -> undecided(each.device(), one, byDevice)));
		data.shows().forEach(each -> each.received().forEach(one -> undecided(each.device(), one, byDevice)));
		List<String> told = byDevice.entrySet().stream()
				.map(each -> wording.some(List.copyOf(each.getValue()), "") + " at " + wording.name(each.getKey())).toList();
		return told.isEmpty() ? Optional.empty() : Optional.of("No text tells which of several sources is taken: " + Wording.someOfDevices(told) + ".");
	}

	private static void undecided(String device, ReceivedData received, Map<String, Set<String>> byDevice) {
		if (received.choice() == ReceivedData.Choice.NOT_TOLD && received.timing().every().isPresent()) {
			byDevice.computeIfAbsent(device, none -> new LinkedHashSet<>()).add(received.use().toString());
		}
	}

	/** The data instances on board, message by message. */
	TextTable instances() {
		TextTable table = new TextTable("Message", "Instances");
		for (DataInstances each : data.instances()) {
			Map<List<String>, List<String>> numbers = new LinkedHashMap<>();
			each.instances().forEach(one -> numbers.computeIfAbsent(one.devices(), none -> new ArrayList<>()).add(String.valueOf(one.instance())));
			table.row(each.pgn().name() + " " + each.pgn().title(), numbers.entrySet().stream()
					.map(told -> String.join(", ", told.getValue()) + " " + names(told.getKey())).collect(Collectors.joining("; ")));
		}
		return table;
	}

	private Optional<String> passedOn() {
		List<String> told = new ArrayList<>();
		told(ToldMessage.How.PASSED, "as they are", told);
		told(ToldMessage.How.TURNED, "made from others", told);
		return told.isEmpty() ? Optional.empty() : Optional.of("Passed on from one network or line to another: " + String.join(", ", told) + ".");
	}

	private void told(ToldMessage.How how, String words, List<String> told) {
		long count = data.carriers().stream().flatMap(each -> each.messages().stream()).filter(each -> each.how() == how).count();
		if (count > 0) {
			told.add(count + (count == 1 ? " message " : " messages ") + words);
		}
	}

	/** What nobody needs or shows, device by device, since that is who might be asked to send less. */
	private Optional<String> unused() {
		Map<String, List<String>> byDevice = new LinkedHashMap<>();
		data.unused().forEach(each -> byDevice.computeIfAbsent(each.device(), none -> new ArrayList<>()).add(each.use().toString()));
		List<String> told = byDevice.entrySet().stream()
				.map(each -> wording.some(each.getValue().stream().distinct().toList(), "") + " from " + wording.name(each.getKey())).toList();
		return told.isEmpty() ? Optional.empty() : Optional.of("Nobody on board needs or shows: " + Wording.someOfDevices(told) + ".");
	}

	private String names(List<String> devices) {
		return wording.some(devices, "");
	}

	private String some(List<MessageUse> messages) {
		return wording.some(messages.stream().map(MessageUse::toString).distinct().toList(), "");
	}
}
