import { createHash } from 'node:crypto';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig, type Plugin } from 'vite';
import { viteSingleFile } from 'vite-plugin-singlefile';

const policy = (hash: string) =>
  `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'sha256-${hash}'; `
  + `style-src 'unsafe-inline'; img-src data: blob:; font-src data:; base-uri 'none'; form-action 'none'" />`;

/** Lets the page run its own inlined script and nothing else: its policy names the script's hash. */
function allowOnlyOwnScript(): Plugin {
  return {
    name: 'allow-only-own-script',
    enforce: 'post',
    generateBundle: {
      order: 'post',
      handler(_, bundle) {
        const page = bundle['index.html'];
        if (page?.type !== 'asset') this.error('The page was not built.');
        const html = String(page.source);
        const scripts = [...html.matchAll(/<script type="module"[^>]*>([\s\S]*?)<\/script>/g)].map((m) => m[1]);
        if (scripts.length !== 1) this.error(`Expected one inlined script, found ${scripts.length}.`);
        const hash = createHash('sha256').update(scripts[0]).digest('base64');
        page.source = html.replace('<head>', () => `<head>\n    ${policy(hash)}`);
      },
    },
  };
}

export default defineConfig({
  plugins: [svelte(), viteSingleFile({ removeViteModuleLoader: true }), allowOnlyOwnScript()],
  build: { target: 'es2022', chunkSizeWarningLimit: 2000, reportCompressedSize: false },
  logLevel: 'warn',
});
