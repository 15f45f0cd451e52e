import ts from "typescript";
import type { TrackedFile } from "./tracked-files.ts";

const LONGEST = 300;
const EXACT = /^\d+\.\d+\.\d+(-[\w.]+)?$/;
const MACHINE_PATHS = /(?<![\w.])\/(home|root|work|Users|tmp|mnt|var\/folders)\/[\w.]|\b[A-Z]:\\\\?Users/;
const REGISTRY =
  /\bregistry\.[a-z-]+\.[a-z]+|https?:\/\/[^\s"']*(npm|yarn)[a-z]*\.(org|com|io)|"resolved": *"https?:/;

/** Lines of a text, a last line break ending the last of them. */
export const lineCount = (text: string): number => text.replace(/\n$/, "").split("\n").length;

/** The middle one of the lengths of some files, in lines. Throws: {Error} when there are none. */
export function medianLength(files: readonly TrackedFile[]): number {
  const middle = files.map(({ text }) => lineCount(text)).sort((a, b) => a - b)[Math.floor(files.length / 2)];
  if (middle === undefined) throw new Error("there are no files to take the middle of");
  return middle;
}

/** Files with more lines than one name can speak for. */
export function tooLong(files: readonly TrackedFile[]): string[] {
  return files.filter(({ text }) => lineCount(text) > LONGEST).map(({ path }) => path);
}

/** Lines that name a package registry's host or a path of one machine. */
export function placesNamed(files: readonly TrackedFile[]): string[] {
  return files.flatMap(({ path, text }) =>
    text
      .split("\n")
      .flatMap((line, index) =>
        MACHINE_PATHS.test(line) || REGISTRY.test(line) ? [`${path}:${index + 1}`] : [],
      ),
  );
}

/** Packages asked for by anything but one exact version, as "name wanted". */
export function looseVersions(packageJson: string): string[] {
  const read = JSON.parse(packageJson);
  const wanted = { ...read.dependencies, ...read.devDependencies, ...read.overrides };
  return versionsNamed(wanted)
    .filter(([, version]) => !EXACT.test(version))
    .map(([name, version]) => `${name} ${version}`);
}

/** An override may stand within the package it is for. */
function versionsNamed(wanted: object): [string, string][] {
  return Object.entries(wanted).flatMap(([name, version]): [string, string][] =>
    typeof version === "object" ? versionsNamed(version) : [[name, String(version)]],
  );
}

const isFunction = (node: ts.Expression | undefined) =>
  node !== undefined && (ts.isArrowFunction(node) || ts.isFunctionExpression(node));

function functionNames(statement: ts.Statement): string[] {
  if (ts.isFunctionDeclaration(statement)) return [statement.name?.text ?? "default"];
  if (!ts.isVariableStatement(statement)) return [];
  return statement.declarationList.declarations
    .filter(({ initializer }) => isFunction(initializer))
    .map(({ name }) => name.getText());
}

/** Exported functions without a docstring, as "path name". */
export function withoutDocstring(files: readonly TrackedFile[]): string[] {
  return files.flatMap(({ path, text }) => {
    const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
    return source.statements
      .filter((statement) => ts.canHaveModifiers(statement))
      .filter((statement) =>
        ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword),
      )
      .filter((statement) => ts.getJSDocCommentsAndTags(statement).length === 0)
      .flatMap(functionNames)
      .map((name) => `${path} ${name}`);
  });
}

const CLOCK_OR_CHANCE =
  /\bDate\.now\(|\bnew Date\(\)|\bMath\.random\(|\bperformance\.now\(|\bprocess\.|\bconsole\./;

/** Files that ask the clock, chance, the process or the console, all of which are outside of a pure function. */
export function impure(files: readonly TrackedFile[]): string[] {
  return files.filter(({ text }) => CLOCK_OR_CHANCE.test(text)).map(({ path }) => path);
}
