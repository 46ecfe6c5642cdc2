/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import com.google.inject.Injector;
import hullwright.lang.HullLanguage;
import hullwright.lang.LanguageProblem;
import hullwright.lang.imports.BuiltInCatalogs;
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
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.IResourceFactory;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.IResourceValidator;
import org.eclipse.xtext.validation.Issue;

/**
 * Parses and links the files of a snapshot. All use of Xtext by the engine is in here; the caller holds the lock.
 */
final class SpecReader {

	/** One slip often derails the parser for a while; what it says after this many problems helps nobody. */
	private static final int MOST_PROBLEMS_OF_A_FILE = 8;

	/** These leave the meaning of the text in doubt; a boat that is made of doubtful text would be full of false alarms. */
	private static final Set<String> DOUBTFUL = Set.of(LanguageProblem.NOT_UNDERSTOOD, LanguageProblem.UNIT_MISSING,
			LanguageProblem.QUANTITY_WRONG, LanguageProblem.UNKNOWN_NAME, LanguageProblem.IMPORT_NOT_FOUND, LanguageProblem.NAME_TAKEN);

	private final Snapshot snapshot;
	private final Injector services = HullLanguage.services();
	private final List<Finding> problems = new ArrayList<>();
	private final Set<String> unsound = new HashSet<>();
	private final Map<String, SpecFile> files = new LinkedHashMap<>();

	SpecReader(Snapshot snapshot) {
		this.snapshot = snapshot;
	}

	ReadProject read() {
		XtextResourceSet resources = services.getInstance(XtextResourceSet.class);
		resources.getURIConverter().getURIHandlers().clear();
		resources.getURIConverter().getURIHandlers().add(new BuiltInCatalogs());
		resources.getURIConverter().getURIHandlers().add(new SnapshotFiles(snapshot));
		resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put("hull", services.getInstance(IResourceFactory.class));
		resources.getLoadOptions().put(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name());
		List<Resource> loaded = new ArrayList<>();
		snapshot.files().forEach((path, content) -> load(resources, path, content).ifPresent(loaded::add));
		loaded.forEach(resource -> validate((XtextResource) resource));
		return new ReadProject(files, problems, unsound, sources(resources));
	}

	private Optional<Resource> load(XtextResourceSet resources, String path, Snapshot.FileContent content) {
		Optional<String> unusable = content.problem().or(() -> noText(content.bytes()));
		if (unusable.isPresent()) {
			String rule = content.problem().isPresent() ? ProjectProblem.FILE_UNREADABLE : ProjectProblem.NOT_TEXT;
			problems.add(Finding.ofText(rule, Severity.ERROR, new Origin(path, path, 0, 0, 1, 1), "the file " + unusable.get(), List.of()));
			unsound.add(path);
			return Optional.empty();
		}
		Resource resource = resources.getResource(SnapshotFiles.uriOf(path), true);
		resource.getContents().stream().filter(SpecFile.class::isInstance).findFirst().ifPresent(file -> files.put(path, (SpecFile) file));
		return Optional.of(resource);
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

	private void validate(XtextResource resource) {
		String path = SnapshotFiles.pathOf(resource.getURI());
		List<Issue> issues = services.getInstance(IResourceValidator.class).validate(resource, CheckMode.ALL, CancelIndicator.NullImpl).stream()
				.sorted(Comparator.comparing(Issue::getOffset, Comparator.nullsFirst(Comparator.naturalOrder())).thenComparing(Issue::getMessage))
				.toList();
		int shown = 0;
		for (Issue issue : issues) {
			Finding problem = problem(path, issue);
			if (DOUBTFUL.contains(problem.rule())) {
				unsound.add(path);
			}
			if (++shown <= MOST_PROBLEMS_OF_A_FILE) {
				problems.add(problem);
			}
		}
		if (shown > MOST_PROBLEMS_OF_A_FILE) {
			Origin last = problems.get(problems.size() - 1).origin();
			problems.add(Finding.ofText(LanguageProblem.NOT_UNDERSTOOD, Severity.ERROR, last,
					"and " + (shown - MOST_PROBLEMS_OF_A_FILE) + " more problems in this file; they often vanish with the first", List.of()));
		}
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

	private List<SourceFile> sources(XtextResourceSet resources) {
		Map<String, SourceFile> sources = new TreeMap<>();
		files.forEach((path, file) -> sources.put(path, new SourceFile(path, role(file), sha256(snapshot.files().get(path).bytes()))));
		for (Resource resource : resources.getResources()) {
			if (BuiltInCatalogs.isBuiltIn(resource.getURI())) {
				String name = SnapshotFiles.pathOf(resource.getURI());
				try (InputStream text = BuiltInCatalogs.open(resource.getURI())) {
					sources.put(name, new SourceFile(name, "catalog", sha256(text.readAllBytes())));
				} catch (IOException e) {
					throw new IllegalStateException("the built-in catalog " + name + " cannot be read again", e);
				}
			}
		}
		return List.copyOf(sources.values());
	}

	private static String role(SpecFile file) {
		return file.getDeclarations().stream()
				.map(declaration -> declaration.eClass().getName().toLowerCase(java.util.Locale.ROOT))
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
