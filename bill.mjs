// Makes docs/bill-of-materials.json and docs/licences.md from what the CycloneDX plugin found at the last full build of the
// monitor, without what changes from build to build (our own checksums) and without addresses of anything but licences.
import { readFileSync, writeFileSync } from "node:fs";

const found = JSON.parse(readFileSync("monitor/target/bill-of-materials.json", "utf8"));
const ours = (part) => part.group === "spoonfall";

const part = (one) => ({
  type: one.type,
  "bom-ref": one["bom-ref"],
  group: one.group,
  name: one.name,
  version: one.version,
  ...(one.scope && { scope: one.scope }),
  ...(!ours(one) && { hashes: one.hashes.filter((hash) => hash.alg === "SHA-256") }),
  ...(one.licenses && { licenses: one.licenses }),
  purl: one.purl,
});

const licence = (one) => {
  if (!one.licenses?.length) {
    throw new Error(`${one.purl} declares no licence: find out by hand which it has, or do without it`);
  }
  return one.licenses.map((each) => each.expression ?? each.license.id ?? each.license.name).join(" or ");
};

const components = found.components.map(part).sort((a, b) => (a.purl < b.purl ? -1 : 1));
const rows = components
  .filter((one) => !ours(one))
  .map((one) => `| ${one.group} | ${one.name} | ${one.version} | ${licence(one)} |`);
const bill = {
  $schema: "http://cyclonedx.org/schema/bom-1.6.schema.json",
  bomFormat: "CycloneDX",
  specVersion: "1.6",
  version: 1,
  metadata: { component: part(found.metadata.component) },
  components,
  dependencies: found.dependencies,
};
writeFileSync("docs/bill-of-materials.json", JSON.stringify(bill, null, 1) + "\n");

writeFileSync(
  "docs/licences.md",
  `# Licences of what runs

Spoonfall itself is under the Apache License 2.0. It comes with these parts, as their authors declare them; \`./spoonfall licences\`
prints this list. Checksums and what needs what are in the bill of materials (CycloneDX), \`docs/bill-of-materials.json\`.
Made by \`./lock --write\`.

| group | part | version | licence |
|---|---|---|---|
${rows.join("\n")}
`,
);
console.log(`${rows.length} parts`);
