import type { Nm } from "../../measure/index.js";
import type { Grout, Money, Mortar, Saw, Sealant } from "../../model/index.js";
import type {
  BagStatement,
  Expression,
  GroutStatement,
  MortarStatement,
  PlanStatement,
  PriceStatement,
  SawStatement,
  SealantStatement,
} from "../syntax.js";
import { amountOf, densityOf, moneyOf } from "./amounts.js";
import { lengthOf } from "./lengths.js";
import { Parts } from "./parts.js";
import type { Scope } from "./scope.js";

/** Puts what a file says of saw, mortar, grout and sealant before what the files that it uses say. */
export function resolveSupplies(parts: Parts<PlanStatement>, scope: Scope): void {
  const { shelf, report } = scope;
  const saw = parts.first("saw");
  if (saw) shelf.put("saw", resolveSaw(saw, scope));
  const mortar = parts.first("mortar");
  if (mortar) shelf.put("mortar", resolveMortar(mortar, scope));
  const grout = parts.first("grout");
  if (grout) shelf.put("grout", resolveGrout(grout, scope));
  const sealant = parts.first("sealant");
  if (sealant) shelf.put("sealant", resolveSealant(sealant, scope));
  shelf.tellContested(report);
}

function resolveSaw(statement: SawStatement, scope: Scope): Saw {
  const { report } = scope;
  const parts = new Parts(statement.body, report);
  const kerf = parts.first("kerf");
  return {
    // A scoring cutter takes nothing away.
    kerf: kerf ? lengthOf(kerf.length, "not-negative", scope) : null,
    longest: positive(parts.first("rip"), scope),
    origin: report.origin(statement),
  };
}

function resolveMortar(statement: MortarStatement, scope: Scope): Mortar {
  const { report } = scope;
  const parts = new Parts(statement.body, report);
  const bag = parts.first("bag");
  const notch = parts.first("notch");
  const width = notch && lengthOf(notch.first, "positive", scope);
  const depth = notch && lengthOf(notch.second, "positive", scope);
  const mass = bag && amountOf(bag.mass, "mass", scope);
  const covers = bag?.covers && amountOf(bag.covers, "area", scope);
  return {
    title: statement.title?.text ?? "",
    notch: width && depth ? { width, depth } : null,
    bag: mass && covers ? { mass, covers } : null,
    backButter: positive(parts.first("back-butter"), scope),
    price: priceOf(parts.first("price"), scope),
    origin: report.origin(statement),
  };
}

function resolveGrout(statement: GroutStatement, scope: Scope): Grout {
  const { report } = scope;
  const parts = new Parts(statement.body, report);
  const density = parts.first("density");
  return {
    title: statement.title?.text ?? "",
    density: density ? densityOf(density.density, scope) : null,
    bag: weighedBag(parts.first("bag"), scope),
    price: priceOf(parts.first("price"), scope),
    origin: report.origin(statement),
  };
}

function resolveSealant(statement: SealantStatement, scope: Scope): Sealant {
  const { report } = scope;
  const parts = new Parts(statement.body, report);
  const tube = parts.first("tube");
  return {
    title: statement.title?.text ?? "",
    tube: tube ? amountOf(tube.volume, "volume", scope) : null,
    depth: positive(parts.first("depth"), scope),
    price: priceOf(parts.first("price"), scope),
    origin: report.origin(statement),
  };
}

function positive(part: { readonly length: Expression } | undefined, scope: Scope): Nm | null {
  return part ? lengthOf(part.length, "positive", scope) : null;
}

function priceOf(part: PriceStatement | undefined, scope: Scope): Money | null {
  return part ? moneyOf(part.price, scope) : null;
}

function weighedBag(part: BagStatement | undefined, scope: Scope): Grout["bag"] {
  const mass = part && amountOf(part.mass, "mass", scope);
  return mass ? { mass } : null;
}
