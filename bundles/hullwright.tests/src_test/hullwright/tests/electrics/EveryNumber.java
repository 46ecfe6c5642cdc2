/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import hullwright.network.Boat;
import java.lang.reflect.Array;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Looks at every number in a result, however deep it lies; the boat itself is no result.
 */
final class EveryNumber {

	private final List<String> notFinite = new ArrayList<>();

	/** Records that were looked at: the same span is read under all conditions. */
	private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());

	private int numbers;

	private EveryNumber() {
	}

	/** Where a result holds NaN or infinity; each place told by the names of the components that lead there. */
	static List<String> notFiniteIn(Object result) {
		EveryNumber walk = new EveryNumber();
		walk.look(result, result.getClass().getSimpleName());
		if (walk.numbers == 0) {
			throw new AssertionError("no number at all was found");
		}
		return walk.notFinite;
	}

	private void look(Object value, String path) {
		if (value instanceof Double number) {
			numbers++;
			if (!Double.isFinite(number)) {
				notFinite.add(path + " = " + number);
			}
		} else if (value instanceof Optional<?> optional) {
			optional.ifPresent(inner -> look(inner, path));
		} else if (value instanceof Iterable<?> values) {
			int i = 0;
			for (Object each : values) {
				look(each, path + "[" + i++ + "]");
			}
		} else if (value instanceof Map<?, ?> map) {
			map.forEach((key, each) -> look(each, path + "[" + key + "]"));
		} else if (value != null && value.getClass().isArray()) {
			for (int i = 0; i < Array.getLength(value); i++) {
				look(Array.get(value, i), path + "[" + i + "]");
			}
		} else if (value instanceof Boat) {
			return;
		} else if (value instanceof Record && seen.add(value)) {
			for (RecordComponent component : value.getClass().getRecordComponents()) {
				look(valueOf(component, value), path + "." + component.getName());
			}
		}
	}

	private static Object valueOf(RecordComponent component, Object of) {
		try {
			component.getAccessor().setAccessible(true);
			return component.getAccessor().invoke(of);
		} catch (ReflectiveOperationException e) {
			throw new AssertionError("cannot look into " + component, e);
		}
	}
}
