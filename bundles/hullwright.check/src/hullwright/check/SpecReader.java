/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import com.google.inject.Injector;
import hullwright.lang.HullLanguage;
import hullwright.lang.LanguageProblem;
import hullwright.lang.imports.BuiltInCatalogs;
import hullwright.lang.imports.Imports;
import hullwright.network.Origin;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.ReplaceText;
import hullwright.rules.report.SourceFile;
import hullwright.spec.SpecFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.IResourceFactory;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.IResourceValidator;
import org.eclipse.xtext.validation.Issue;

/**
 * Parses and links the files of snapshots. All use of Xtext by the engine is in here; the caller holds the lock.
 * <p>
 * What was read stays read: of the next snapshot only files whose bytes differ, and files that import them, are read again.
 * A test holds this against reading everything.
 */
final class SpecReader {

	/** One slip often derails the parser for a while; what it says after this many problems helps nobody. */
	private static final int MOST_PROBLEMS_OF_A_FILE = 8;

	/** These leave the meaning of the text in doubt; a boat that is made of doubtful text would be full of false alarms. */
	private static final Set<String> DOUBTFUL = Set.of(LanguageProblem.NOT_UNDERSTOOD, LanguageProblem.UNIT_MISSING,
			LanguageProblem.QUANTITY_WRONG, LanguageProblem.UNKNOWN_NAME, LanguageProblem.IMPORT_NOT_FOUND, LanguageProblem.NAME_TAKEN);

	private final Injector services = HullLanguage.services();
	private final SnapshotFiles snapshotFiles = new SnapshotFiles();
	private final XtextResourceSet resources = resourceSet();
	private final SortedMap<String, ReadFile> readFiles = new TreeMap<>();

	/** A file as it was read last. */
	private record ReadFile(Snapshot.FileContent content, Optional<SpecFile> spec, Set<String> imports, List<Finding> problems, boolean unsound) {
	}

	private XtextResourceSet resourceSet() {
		XtextResourceSet set = services.getInstance(XtextResourceSet.class);
		set.getURIConverter().getURIHandlers().clear();
		set.getURIConverter().getURIHandlers().add(new BuiltInCatalogs());
		set.getURIConverter().getURIHandlers().add(snapshotFiles);
		set.getResourceFactoryRegistry().getExtensionToFactoryMap().put("hull", services.getInstance(IResourceFactory.class));
		set.getLoadOptions().put(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name());
		return set;
	}

	/** The project that a snapshot shows. Its specs are good until the next call. */
	ReadProject read(Snapshot snapshot) {
		snapshotFiles.show(snapshot);
		forgetWhatChanged(snapshot);
		List<String> unread = snapshot.files().keySet().stream().filter(path -> !readFiles.containsKey(path)).toList();
		Map<String, Resource> loaded = new LinkedHashMap<>();
		for (String path : unread) {
			Snapshot.FileContent content = snapshot.files().get(path);
			Optional<Finding> unusable = unusable(path, content);
			if (unusable.isPresent()) {
				readFiles.put(path, new ReadFile(content, Optional.empty(), Set.of(), List.of(unusable.get()), true));
			} else {
				loaded.put(path, resources.getResource(SnapshotFiles.uriOf(path), true));
			}
		}
		loaded.forEach((path, resource) -> readFiles.put(path, validated(path, snapshot.files().get(path), (XtextResource) resource)));
		return project();
	}

	private void forgetWhatChanged(Snapshot snapshot) {
		Set<String> stale = new HashSet<>();
		snapshot.files().forEach((path, content) -> {
			ReadFile read = readFiles.get(path);
			if (read == null || !read.content.isSameAs(content)) {
				stale.add(path);
			}
		});
		readFiles.keySet().stream().filter(path -> !snapshot.files().containsKey(path)).forEach(stale::add);
		for (boolean more = true; more;) {
			more = readFiles.entrySet().stream().filter(each -> each.getValue().imports.stream().anyMatch(stale::contains))
					.map(Map.Entry::getKey).toList().stream().map(stale::add).reduce(false, Boolean::logicalOr);
		}
		readFiles.keySet().removeAll(stale);
		stale.forEach(path -> {
			Resource old = resources.getResource(SnapshotFiles.uriOf(path), false);
			if (old != null) {
				resources.getResources().remove(old);
			}
		});
	}

	private ReadProject project() {
		Map<String, SpecFile> files = new LinkedHashMap<>();
		List<Finding> problems = new ArrayList<>();
		Set<String> unsound = new HashSet<>();
		readFiles.forEach((path, file) -> {
			file.spec.ifPresent(spec -> files.put(path, spec));
			problems.addAll(file.problems);
			if (file.unsound) {
				unsound.add(path);
			}
		});
		problems.replaceAll(new ImportFixes(files, this::builtIn)::with);
		return new ReadProject(files, problems, unsound, sources(files));
	}

	/** Why a file cannot be read as text at all, if so. */
	static Optional<Finding> unusable(String path, Snapshot.FileContent content) {
		String rule = content.problem().isPresent() ? ProjectProblem.FILE_UNREADABLE : ProjectProblem.NOT_TEXT;
		return content.problem().or(() -> noText(content.bytes()))
				.map(why -> Finding.ofText(rule, Severity.ERROR, new Origin(path, path, 0, 0, 1, 1), "the file " + why, List.of()));
	}

	private static Optional<String> noText(byte[] bytes) {
		for (int at = 0, line = 1; at < bytes.length; at++) {
			if (bytes[at] == 0) {
				return Optional.of("is no text: it has a zero byte in line " + line);
			}
			line += bytes[at] == '\n' ? 1 : 0;
		}
		ByteBuffer unread = ByteBuffer.wrap(bytes);
		try {
			StandardCharsets.UTF_8.newDecoder().decode(unread);
			return Optional.empty();
		} catch (CharacterCodingException e) {
			int line = 1;
			for (int at = 0; at < unread.position(); at++) {
				line += bytes[at] == '\n' ? 1 : 0;
			}
			return Optional.of("is not in UTF-8: see line " + line + "; save it in UTF-8");
		}
	}

	private ReadFile validated(String path, Snapshot.FileContent content, XtextResource resource) {
		List<Finding> all = services.getInstance(IResourceValidator.class).validate(resource, CheckMode.ALL, CancelIndicator.NullImpl).stream()
				.sorted(Comparator.comparing(Issue::getOffset, Comparator.nullsFirst(Comparator.naturalOrder())).thenComparing(Issue::getMessage))
				.map(issue -> problem(path, issue))
				.toList();
		List<Finding> shown = new ArrayList<>(all.subList(0, Math.min(all.size(), MOST_PROBLEMS_OF_A_FILE)));
		if (all.size() > shown.size()) {
			shown.add(Finding.ofText(LanguageProblem.NOT_UNDERSTOOD, Severity.ERROR, all.get(shown.size()).origin(),
					"and " + (all.size() - shown.size()) + " more problems from here on; they often vanish with the first", List.of()));
		}
		boolean unsound = all.stream().map(Finding::rule).anyMatch(DOUBTFUL::contains);
		Optional<SpecFile> spec = resource.getContents().stream().filter(SpecFile.class::isInstance).map(SpecFile.class::cast).findFirst();
		Set<String> imports = spec.map(SpecReader::imports).orElse(Set.of());
		return new ReadFile(content, spec, imports, shown, unsound);
	}

	/** The paths that a file imports, whether or not there is a file. */
	private static Set<String> imports(SpecFile file) {
		return file.getImports().stream().flatMap(statement -> Imports.target(statement).stream()).map(SnapshotFiles::pathOf).collect(Collectors.toSet());
	}

	private static Finding problem(String path, Issue issue) {
		String rule = issue.getCode() != null && issue.getCode().startsWith("language/") ? issue.getCode() : LanguageProblem.NOT_UNDERSTOOD;
		Severity severity = issue.getSeverity() == org.eclipse.xtext.diagnostics.Severity.ERROR ? Severity.ERROR : Severity.WARNING;
		int offset = issue.getOffset() == null ? 0 : issue.getOffset();
		int length = issue.getLength() == null ? 0 : Math.max(0, issue.getLength());
		int line = issue.getLineNumber() == null ? 1 : issue.getLineNumber();
		int column = issue.getColumn() == null ? 1 : issue.getColumn();
		Origin origin = new Origin(path, path, offset, length, line, column);
		return Finding.ofText(rule, severity, origin, issue.getMessage(), fixes(rule, origin, issue.getData()));
	}

	private static List<Fix> fixes(String rule, Origin origin, String[] data) {
		if (data == null || data.length == 0 || data[0] == null || data[0].isEmpty()) {
			return List.of();
		}
		Fix.Reach reach = rule.equals(LanguageProblem.UNIT_MISSING) ? Fix.Reach.SAFE : Fix.Reach.DESIGN;
		return List.of(new Fix("Write '" + data[0] + "'", reach, List.of(new ReplaceText(origin, data[0]))));
	}

	private List<SourceFile> sources(Map<String, SpecFile> files) {
		Map<String, SourceFile> sources = new TreeMap<>();
		files.forEach((path, file) -> sources.put(path, new SourceFile(path, role(file), sha256(readFiles.get(path).content.bytes()))));
		Set<String> imported = readFiles.values().stream().flatMap(file -> file.imports.stream()).collect(Collectors.toSet());
		for (Resource resource : resources.getResources()) {
			String name = SnapshotFiles.pathOf(resource.getURI());
			if (BuiltInCatalogs.isBuiltIn(resource.getURI()) && imported.contains(name)) {
				sources.put(name, new SourceFile(name, "catalog", sha256(builtIn(resource.getURI()))));
			}
		}
		return List.copyOf(sources.values());
	}

	/** The built-in catalogs by the name under which they are imported, whether or not a project imports them. */
	Map<String, SpecFile> builtIn() {
		Map<String, SpecFile> catalogs = new LinkedHashMap<>();
		for (String name : BuiltInCatalogs.NAMES) {
			Resource resource = resources.getResource(BuiltInCatalogs.uriOf(name), true);
			resource.getContents().stream().filter(SpecFile.class::isInstance).map(SpecFile.class::cast)
					.forEach(file -> catalogs.put(BuiltInCatalogs.SCHEME + ":" + name, file));
		}
		return catalogs;
	}

	private static byte[] builtIn(URI catalog) {
		try (InputStream text = BuiltInCatalogs.open(catalog)) {
			return text.readAllBytes();
		} catch (IOException e) {
			throw new IllegalStateException("the built-in catalog " + catalog + " cannot be read again", e);
		}
	}

	private static String role(SpecFile file) {
		return file.getDeclarations().stream()
				.map(declaration -> declaration.eClass().getName().toLowerCase(Locale.ROOT))
				.distinct()
				.collect(Collectors.joining(", "));
	}

	private static String sha256(byte[] bytes) {
		try {
			return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException("every Java platform has SHA-256", e);
		}
	}
}
