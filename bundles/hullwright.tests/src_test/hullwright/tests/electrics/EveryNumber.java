/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import hullwright.network.Boat;
import java.lang.reflect.Array;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Looks at every number in a result, however deep it lies; the boat itself is no result.
 */
final class EveryNumber {

	private static final Map<Class<?>, Method[]> ACCESSORS = new HashMap<>();

	private final List<String> notFinite = new ArrayList<>();

	/** Records that were looked at: the same span is read under all conditions. */
	private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());

	/** What leads to the present value: names of components, keys, places in a list; the last one first. */
	private final Deque<Object> path = new ArrayDeque<>();

	private int numbers;

	private EveryNumber() {
	}

	/** Where a result holds NaN or infinity, told by what leads there. */
	static List<String> notFiniteIn(Object result) {
		EveryNumber walk = new EveryNumber();
		walk.look(result);
		if (walk.numbers == 0) {
			throw new AssertionError("no number at all was found");
		}
		return walk.notFinite;
	}

	private void look(Object value) {
		if (value instanceof Double number) {
			numbers++;
			if (!Double.isFinite(number)) {
				List<Object> way = new ArrayList<>(path);
				Collections.reverse(way);
				notFinite.add(way + " = " + number);
			}
		} else if (value instanceof Optional<?> optional) {
			optional.ifPresent(this::look);
		} else if (value instanceof Iterable<?> values) {
			int i = 0;
			for (Object each : values) {
				look(i++, each);
			}
		} else if (value instanceof Map<?, ?> map) {
			map.forEach(this::look);
		} else if (value != null && value.getClass().isArray()) {
			for (int i = 0; i < Array.getLength(value); i++) {
				look(i, Array.get(value, i));
			}
		} else if (value instanceof Record && !(value instanceof Boat) && seen.add(value)) {
			for (Method accessor : accessors(value.getClass())) {
				look(accessor.getName(), valueOf(accessor, value));
			}
		}
	}

	private void look(Object step, Object value) {
		path.push(step);
		look(value);
		path.pop();
	}

	private static synchronized Method[] accessors(Class<?> type) {
		return ACCESSORS.computeIfAbsent(type, record -> {
			RecordComponent[] components = record.getRecordComponents();
			Method[] accessors = new Method[components.length];
			for (int i = 0; i < accessors.length; i++) {
				accessors[i] = components[i].getAccessor();
				accessors[i].setAccessible(true);
			}
			return accessors;
		});
	}

	private static Object valueOf(Method accessor, Object of) {
		try {
			return accessor.invoke(of);
		} catch (ReflectiveOperationException e) {
			throw new AssertionError("cannot look at " + accessor, e);
		}
	}
}
