import { CONTRACT } from '../../shared/contract/contract.ts';
const isProcedure = (name) => Object.hasOwn(CONTRACT, name);
export const refusal = (code, place, sentence) => ({ ok: false, problems: [{ code, place, sentence }] });
/**
 * The one place where a message becomes a call: the name is looked up, what goes in and what comes out is checked against the
 * contract, and a bug is caught, logged without the user's data, and answered in plain words.
 */
export function makeDispatch(procedures, log) {
    return async (name, input) => {
        if (!isProcedure(name))
            return { kind: 'unknown', body: refusal('unknown procedure', '', 'This program has no such command.') };
        const { input: takes, output: gives } = CONTRACT[name];
        const asked = takes.safeParse(input);
        if (!asked.success)
            return { kind: 'input', body: { ok: false, problems: asked.error.issues.map((one) => notUnderstood(name, one)) } };
        try {
            const procedure = procedures[name];
            return { kind: 'done', body: gives.parse(await procedure(asked.data)) };
        }
        catch (error) {
            log(name, error);
            return { kind: 'bug', body: refusal('bug', '', BUG) };
        }
    };
}
const BUG = 'Something went wrong inside the program; this is a fault of the program, not of your build. ' +
    'Nothing was half done. A note of where it happened is in steerwright.log in the data folder.';
function notUnderstood(name, issue) {
    const place = issue.path.map(String).join('.');
    return {
        code: 'input',
        place,
        sentence: `The command ${name} was not understood${place === '' ? '' : ` at ${place}`}: ${issue.message}.`,
    };
}
