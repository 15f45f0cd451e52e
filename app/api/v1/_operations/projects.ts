import { fields } from "../../../../lib/entry-fields.ts";
import { projectEntry, projectPatch } from "../../../../lib/projects/project-entry.ts";
import { requirementEntry, requirementPatch } from "../../../../lib/projects/requirement-entry.ts";
import { exposureShape } from "../../../../lib/show/api-exposure.ts";
import { projectShape, requirementShape } from "../../../../lib/show/api-project.ts";
import { plainBody } from "../_answers/body.ts";
import { oneOrManyShape } from "../_answers/many-answer.ts";
import { newOrManyBody } from "../_answers/many-body.ts";
import { bare, operation } from "../_answers/operation.ts";
import { asOfQuery, pageQuery, pageShape } from "../_answers/page.ts";

const asOf = fields(asOfQuery);
const datedList = fields({ ...pageQuery, ...asOfQuery });

export const listProjects = operation({
  ...bare,
  method: "GET",
  path: "/projects",
  summary: "Projects, by id",
  query: datedList,
  answer: pageShape(projectShape),
});

export const addProjects = operation({
  ...bare,
  method: "POST",
  path: "/projects",
  summary: "A project, or many",
  body: newOrManyBody(projectEntry),
  answer: oneOrManyShape(projectShape),
  makes: true,
});

const project = { ...bare, path: "/projects/{id}", answer: projectShape };

export const readProject = operation({ ...project, method: "GET", summary: "A project", query: asOf });

export const changeProject = operation({
  ...project,
  method: "PATCH",
  summary: "Changes a project; a status holds from statusFrom, else from today",
  body: plainBody(projectPatch),
});

export const readExposure = operation({
  ...bare,
  method: "GET",
  path: "/projects/{id}/exposure",
  summary: "What a project still needs, what is locked in, what finishing it costs, against its budget",
  query: asOf,
  answer: exposureShape,
});

export const listRequirements = operation({
  ...bare,
  method: "GET",
  path: "/projects/{id}/requirements",
  summary: "Requirements of a project, by id",
  query: datedList,
  answer: pageShape(requirementShape),
});

export const addRequirements = operation({
  ...bare,
  method: "POST",
  path: "/projects/{id}/requirements",
  summary: "A requirement of a project, or many",
  body: newOrManyBody(requirementEntry),
  answer: oneOrManyShape(requirementShape),
  makes: true,
});

const requirement = { ...bare, path: "/requirements/{id}", answer: requirementShape };

export const readRequirement = operation({
  ...requirement,
  method: "GET",
  summary: "A requirement with all its revisions",
  query: asOf,
});

export const reviseRequirement = operation({
  ...requirement,
  method: "PATCH",
  summary: "A dated revision of a requirement; closedOn closes it, null opens it again",
  body: plainBody(requirementPatch),
});
