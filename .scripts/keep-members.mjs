// Takes a module of a package without the parts that nothing here asks for, where it comes as one file
// in which all hangs together: no bundler can tell what is never called on a class. With the members
// go the classes that they alone use, which a bundler then finds.
import ts from "typescript";

/**
 * The text of a module, of whose classes, objects and texts only the members named stay (of a text
 * nothing); without the values that are made of the classes in `unmade`, and what is done with those.
 * Throws where there is no such declaration or member: the package has changed, and so must the list.
 */
export function keepMembers(text, { kept, unmade = [] }) {
  const { statements } = ts.createSourceFile("module.mjs", text, ts.ScriptTarget.Latest);
  const declared = declarations(statements);
  const gone = Object.entries(kept).flatMap(([name, members]) =>
    leftOut(found(declared, name), name, members),
  );
  for (const name of unmade) found(declared, name);
  gone.push(...madeOf(statements, new Set(unmade)));
  let slim = text;
  for (const { pos, end } of gone.sort((a, b) => b.pos - a.pos))
    slim = slim.slice(0, pos) + slim.slice(end);
  return slim;
}

/** The classes and the values of a module, by name. */
function declarations(statements) {
  const declared = new Map();
  for (const statement of statements) {
    if (ts.isClassDeclaration(statement)) declared.set(statement.name.text, statement);
    for (const { name, initializer } of variablesOf(statement))
      if (ts.isIdentifier(name) && initializer) declared.set(name.text, initializer);
  }
  return declared;
}

function variablesOf(statement) {
  return ts.isVariableStatement(statement) ? statement.declarationList.declarations : [];
}

function found(declared, name) {
  const value = declared.get(name);
  if (!value) throw new Error(`The module declares no ${name}`);
  return value;
}

/** The places of the members that go. */
function leftOut(value, name, kept) {
  if (ts.isStringLiteral(value))
    return [{ pos: value.end - 1 - value.text.length, end: value.end - 1 }];
  const isObject = ts.isObjectLiteralExpression(value);
  const members = [...(isObject ? value.properties : value.members)];
  const nameOf = (member) => member.name?.text ?? "constructor";
  for (const wanted of kept) {
    if (!members.some((member) => nameOf(member) === wanted))
      throw new Error(`The module's ${name} has no ${wanted}`);
  }
  // The comma behind a member of an object goes with it.
  return members.flatMap((member, i) => {
    if (kept.includes(nameOf(member))) return [];
    const next = members[i + 1];
    return [{ pos: member.pos, end: isObject && next ? next.pos : member.end }];
  });
}

/** `const a = new Unmade()`, `a.add(...)`, `Unmade.set(...)`: as each stands on its own, each goes. */
function madeOf(statements, names) {
  return statements.filter((statement) => {
    const [variable] = variablesOf(statement);
    const made = variable?.initializer;
    if (made && ts.isNewExpression(made) && names.has(made.expression.text)) {
      names.add(variable.name.text);
      return true;
    }
    const called = ts.isExpressionStatement(statement) && statement.expression;
    return called && ts.isCallExpression(called) && names.has(called.expression.expression?.text);
  });
}
