/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.MissingMap;
import hullwright.network.data.MessageUse;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A gateway is asked for a message for which it has no map in this direction: an error where a device cannot work without, a warning
 * where only the text of a line says so. One finding for each gateway and each message or line that it is asked for.
 */
public final class SentenceWithoutMap implements BoatRule {

	/** What is told as one finding: a message that devices cannot do without, or all that the text of one line asks for. */
	private record Asked(String gateway, Optional<MessageUse> heard, Optional<MessageUse> message, String carrier) {

		static Asked of(MissingMap map) {
			return new Asked(map.gateway(), map.heard(), map.device().map(device -> map.asked()), map.carrier().name());
		}
	}

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/sentence-without-map", "Gateway without a map for what it is to tell", Severity.ERROR,
				"{gateway} has no map {map}, which {asker}",
				"common practice: a gateway makes what its table of messages lists for this direction, and many tables are not symmetrical");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		Map<Asked, List<MissingMap>> maps = boat.figures().data().missingMaps().stream()
				.collect(Collectors.groupingBy(Asked::of, LinkedHashMap::new, Collectors.toList()));
		return maps.entrySet().stream().map(each -> {
			Asked asked = each.getKey();
			List<String> devices = each.getValue().stream().flatMap(map -> map.device().stream()).distinct().toList();
			Finding.Builder finding = asked.message().isPresent() ? boat.finding(onBoard.origin(asked.gateway())) : boat.warning(onBoard.origin(asked.gateway()));
			return finding.key(InWords.name(asked.carrier()) + asked.message().map(message -> " " + message).orElse(""))
					.value("gateway", InWords.name(asked.gateway()))
					.value("map", asked.heard().map(heard -> "from " + heard + " ").orElse("") + "to "
							+ asked.message().map(InWords::message).orElseGet(() -> InWords.messages(each.getValue().stream().map(MissingMap::asked).toList())))
					.value("asker", asked.message().isPresent() ? InWords.names(devices) + " cannot work without" : InWords.name(asked.carrier()) + " is to carry")
					.build();
		}).toList();
	}
}
